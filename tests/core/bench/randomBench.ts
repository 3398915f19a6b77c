import fc from "fast-check";
import type { BenchJob, BenchSnapshot, BenchStep, RouteStep, Station, StepKind } from "../../../core/bench/benchTypes.ts";
import { benchJob, benchStep, benchWith, hands, inMinutes, routeOfSteps } from "./benchBuilders.ts";

const kinds: readonly StepKind[] = ["pullParts", "tipPrepare", "bond", "bondSet", "cut", "grip", "gripSet", "measure", "sign", "walk"];
const places: readonly Station[] = ["bench", "cutter", "bonding", "gripping"];

const rows = fc
  .array(
    fc.record({
      medianMin: fc.double({ min: 0.1, max: 30, noNaN: true }),
      unattended: fc.boolean(),
      floorMin: fc.integer({ min: 0, max: 20 }),
      station: fc.constantFrom(...places),
      before: fc.array(fc.nat(9), { maxLength: 3 }),
    }),
    { minLength: 1, maxLength: kinds.length },
  )
  .map((drawn) =>
    drawn.flatMap(({ before, ...row }, place): RouteStep[] => {
      const kind = kinds[place];
      if (kind === undefined) return [];
      return [{ ...row, kind, floorMin: row.unattended ? row.floorMin : 0, after: before.flatMap((at) => (at < place ? (kinds[at] ?? []) : [])) }];
    }),
  );

const minutesOrNull = (max: number): fc.Arbitrary<number | null> => fc.option(fc.integer({ min: -30, max }), { nil: null });

/** Some first steps done, the next one begun: running only in the first job, so that one technician is enough. */
function begun(route: readonly RouteStep[], done: number, spentMin: number, running: boolean): readonly BenchStep[] {
  return route.map((step, place) => {
    if (place < done) return benchStep(step, { state: "done", startedAt: inMinutes(-9), finishedAt: inMinutes(-1) });
    if (place > done || spentMin === 0) return benchStep(step);
    return running
      ? benchStep(step, { state: "running", startedAt: inMinutes(-spentMin) })
      : benchStep(step, { state: "paused", workedMs: spentMin * 60_000 });
  });
}

const job = fc.record({
  rows,
  done: fc.nat(8),
  spentMin: fc.nat(12),
  release: minutesOrNull(90),
  due: minutesOrNull(200),
  weight: fc.double({ min: 0.1, max: 20, noNaN: true }),
  held: fc.boolean(),
});

const jobs = fc.array(job, { minLength: 1, maxLength: 6 }).map((drawn) =>
  drawn.map(
    (one, at): BenchJob =>
      benchJob(at + 1, routeOfSteps(...one.rows), {
        steps: begun(one.rows, one.done, one.spentMin, at === 0),
        releaseAt: one.release === null ? null : inMinutes(one.release),
        dueAt: one.due === null ? null : inMinutes(one.due),
        weight: one.weight,
        held: one.held && at > 0,
      }),
  ),
);

const interval = fc
  .record({ from: fc.integer({ min: -60, max: 300 }), length: fc.integer({ min: 0, max: 120 }) })
  .map(({ from, length }) => ({ from: inMinutes(from), to: inMinutes(from + length) }));

/** Any bench: opening hours that may overlap and are in no order, roll-out at any time or never. */
export const anyBench: fc.Arbitrary<BenchSnapshot> = fc
  .record({
    jobs,
    technicians: fc.integer({ min: 1, max: 3 }),
    open: fc.array(interval, { maxLength: 5 }),
    rollOut: minutesOrNull(400),
    capacity: fc.integer({ min: 1, max: 2 }),
  })
  .map(({ jobs, technicians, open, rollOut, capacity }) =>
    benchWith(jobs, {
      technicians: hands(technicians),
      open,
      rollOutAt: rollOut === null ? null : inMinutes(rollOut),
      stations: { bench: capacity, cutter: 1, bonding: 1, gripping: capacity, loftLie: 1, scale: 1, marking: 1, walk: 1 },
    }),
  );

/** The same benches in a workshop that never closes. */
export const openBench: fc.Arbitrary<BenchSnapshot> = anyBench.map((bench) => ({
  ...bench,
  open: [{ from: bench.now, to: inMinutes(1_000_000) }],
  rollOutAt: null,
}));
