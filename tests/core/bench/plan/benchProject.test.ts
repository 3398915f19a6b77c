import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BenchSnapshot, StepRef } from "../../../../core/bench/benchTypes.ts";
import { benchProject, planOrderInSlices } from "../../../../core/bench/plan/benchProject.ts";
import { planProject } from "../../../../core/bench/plan/planProject.ts";
import { predecessorPlaces } from "../../../../core/bench/stepOrder.ts";
import { DomainError } from "../../../../core/errors.ts";
import { id, instant } from "../../../../core/kinds.ts";
import { byLaw } from "../../../support/checkOf.ts";
import { benchJob, benchStep, benchWith, hands, inMinutes, MIN, routeOfSteps, work } from "../benchBuilders.ts";
import { anyBench } from "../randomBench.ts";
import { faultsOf } from "./faultsOf.ts";

const DAY_MIN = 1440;

function planOrder(snapshot: BenchSnapshot, budget = { schedules: 30, seed: 1 }): readonly StepRef[] {
  const slices = planOrderInSlices(snapshot, budget);
  for (;;) {
    const slice = slices.next();
    if (slice.done) return slice.value;
  }
}

const nameOf = ({ order, job, place }: StepRef): string => `${order}/${job}/${place}`;
const openSteps = ({ jobs }: BenchSnapshot) =>
  jobs.flatMap(({ order, job, held, steps }) =>
    held ? [] : steps.flatMap(({ state }, place) => (state === "done" || state === "skipped" ? [] : [{ order, job, place }])),
  );

describe(byLaw(benchProject, "each step that is left once, none of a held job, each after what it waits for"), () => {
  it("has every step that is left, and no other", () => {
    fc.assert(
      fc.property(anyBench, (bench) => {
        expect(benchProject(bench).refs.map(nameOf)).toEqual(openSteps(bench).map(nameOf));
      }),
    );
  });

  it("can be planned without breaking anything", () => {
    fc.assert(
      fc.property(anyBench, (bench) => {
        const { project } = benchProject(bench);
        expect(faultsOf(project, planProject(project, { schedules: 20, seed: 1, goal: "weightedTardiness" }).startsMs)).toEqual([]);
      }),
    );
  });
});

describe(byLaw(planOrderInSlices, "each step that is left once, after what it waits for"), () => {
  it("orders all of them", () => {
    fc.assert(
      fc.property(anyBench, (bench) => {
        const ordered = planOrder(bench);
        expect(ordered.map(nameOf).toSorted()).toEqual(openSteps(bench).map(nameOf).toSorted());
        const rank = new Map(ordered.map((ref, at) => [nameOf(ref), at]));
        for (const { order, job, steps } of bench.jobs) {
          predecessorPlaces(steps.map(({ route }) => route)).forEach((earlier, place) => {
            const later = rank.get(nameOf({ order, job, place }));
            for (const one of earlier) {
              const sooner = rank.get(nameOf({ order, job, place: one }));
              if (sooner !== undefined && later !== undefined && steps[place]?.state !== "running") expect(sooner).toBeLessThan(later);
            }
          });
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe("benchProject", () => {
  const route = routeOfSteps(
    work("bond", 4, { station: "bonding" }),
    work("bondSet", 5, { unattended: true, floorMin: 8, station: "bonding", after: ["bond"] }),
    work("soleWork", 15, { station: "marking", skill: "grinding" }),
    work("walk", 2, { station: "walk", after: ["bondSet", "soleWork"] }),
  );
  const minutes = (bench: BenchSnapshot): readonly number[] => benchProject(bench).project.activities.map(({ durationMs }) => durationMs / MIN);

  it("takes medians, and of a wait no less than its floor", () => {
    expect(minutes(benchWith([benchJob(7, route)]))).toEqual([4, 8, 15, 2]);
    const slow = routeOfSteps(work("bondSet", 12, { unattended: true, floorMin: 8 }), work("bond", 4, { floorMin: 9 }));
    expect(minutes(benchWith([benchJob(7, slow)]))).toEqual([12, 4]);
  });

  it("takes a station, a technician and a skill for work by hand, nothing for a wait", () => {
    const technicians = [...hands(1), { person: id<"person">(2), skills: [], away: [] }];
    const { project } = benchProject(benchWith([benchJob(7, route)], { technicians }));
    const stations = [2, 1, 1, 1, 1, 1, 1, 9];
    expect(project.capacities).toEqual([...stations, 2, 1, 1, 1]);
    expect(project.activities.map(({ demands }) => demands.join(""))).toEqual(["001000001000", "000000000000", "000000101100", "000000011000"]);
    expect(project.activities.map(({ byHand }) => byHand)).toEqual([true, false, true, true]);
  });

  it("counts what is left of a step under way, at least a second", () => {
    const steps = (spentMin: number, workedMs: number) =>
      route.steps.map((one, place) => benchStep(one, place === 2 ? { state: "running", startedAt: inMinutes(-spentMin), workedMs } : {}));
    const left = (spentMin: number, workedMs: number) => benchProject(benchWith([benchJob(7, route, { steps: steps(spentMin, workedMs) })])).project;
    expect(left(5, 3 * MIN).activities[2]).toMatchObject({ durationMs: 7 * MIN, underWay: true });
    expect(left(90, 0).activities[2]?.durationMs).toBe(1000);
    expect(left(-3, 0).activities[2]?.durationMs).toBe(15 * MIN);
    expect(left(5, 0).activities.map(({ underWay }) => underWay)).toEqual([false, false, true, false]);
  });

  it("counts what was worked before a pause", () => {
    const steps = route.steps.map((one, place) =>
      benchStep(one, place === 2 ? { state: "paused", startedAt: inMinutes(-30), workedMs: 6 * MIN } : {}),
    );
    expect(benchProject(benchWith([benchJob(7, route, { steps })])).project.activities[2]).toMatchObject({ durationMs: 9 * MIN, underWay: false });
  });

  it("leaves out what is done or skipped, and a held job", () => {
    const steps = route.steps.map((one, place) => benchStep(one, place === 0 ? { state: "done" } : place === 2 ? { state: "skipped" } : {}));
    const bench = benchWith([benchJob(6, route, { held: true }), benchJob(7, route, { steps })]);
    const { project, refs } = benchProject(bench);
    expect(refs).toEqual([
      { order: 7, job: 1, place: 1 },
      { order: 7, job: 1, place: 3 },
    ]);
    expect(project.activities.map(({ before }) => before)).toEqual([[], [0]]);
  });

  it("counts the places of forerunners on from one job to the next", () => {
    const { project } = benchProject(benchWith([benchJob(6, route), benchJob(7, route)]));
    expect(project.activities.map(({ before }) => before)).toEqual([[], [0], [], [1, 2], [], [4], [], [5, 6]]);
    expect(project.activities.map(({ group }) => group)).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
  });

  it("has the due time and weight at the step that comes after all others", () => {
    const again = routeOfSteps(...route.steps, work("bond", 4, { station: "bonding" }));
    const job = benchJob(7, again, { dueAt: inMinutes(50), weight: 3 });
    expect(benchProject(benchWith([job])).project.activities.map(({ due }) => due)).toEqual([null, null, null, { dueMs: 50 * MIN, weight: 3 }, null]);
  });

  it("is due at roll-out without a due time, and in a day when the truck stays", () => {
    const dueMin = (rollOutAt: BenchSnapshot["rollOutAt"]) =>
      (benchProject(benchWith([benchJob(7, route)], { rollOutAt })).project.activities.at(-1)?.due?.dueMs ?? 0) / MIN;
    expect(dueMin(inMinutes(200))).toBe(200);
    expect(dueMin(null)).toBe(DAY_MIN);
  });

  it("starts nothing of a job before it is released, and nothing in the past", () => {
    const releases = (at: number) =>
      new Set(benchProject(benchWith([benchJob(7, route, { releaseAt: inMinutes(at) })])).project.activities.map(({ releaseMs }) => releaseMs / MIN));
    expect(releases(25)).toEqual(new Set([25]));
    expect(releases(-25)).toEqual(new Set([0]));
  });

  it("is open in opening hours, up to roll-out", () => {
    const open = [
      { from: inMinutes(60), to: inMinutes(120) },
      { from: inMinutes(-60), to: inMinutes(30) },
    ];
    expect(benchProject(benchWith([], { open, rollOutAt: inMinutes(100) })).project.open).toEqual([
      { fromMs: 0, toMs: 30 * MIN },
      { fromMs: 60 * MIN, toMs: 100 * MIN },
    ]);
  });
});

describe("planOrderInSlices", () => {
  const short = routeOfSteps(work("inspect", 5), work("walk", 1, { station: "walk", after: ["inspect"] }));
  const job = (order: number, dueMin: number, weight = 1) => benchJob(order, short, { dueAt: inMinutes(dueMin), weight });
  const firsts = (snapshot: BenchSnapshot) => planOrder(snapshot).flatMap(({ order, place }) => (place === 0 ? [order] : []));

  it("puts what is due first to the front", () => {
    expect(firsts(benchWith([job(1, 60), job(2, 12), job(3, 6)]))).toEqual([3, 2, 1]);
  });

  it("puts the heavier of two late ones to the front", () => {
    expect(firsts(benchWith([job(1, 0), job(2, 0, 9)]))).toEqual([2, 1]);
  });

  it("puts last what nobody there can do", () => {
    const grinding = routeOfSteps(work("soleWork", 5, { skill: "grinding" }));
    const technicians = [{ person: id<"person">(1), skills: ["stamping" as const], away: [] }];
    const bench = benchWith([benchJob(1, grinding, { dueAt: inMinutes(1), weight: 9 }), job(2, 60)], { technicians });
    expect(planOrder(bench).map(({ order }) => order)).toEqual([2, 2, 1]);
  });

  it("is the same for the same seed", () => {
    fc.assert(
      fc.property(anyBench, fc.integer(), (bench, seed) => {
        expect(planOrder(bench, { schedules: 10, seed })).toEqual(planOrder(bench, { schedules: 10, seed }));
      }),
      { numRuns: 30 },
    );
  });

  it("has nothing to order on an empty bench or without a technician", () => {
    expect(planOrder(benchWith([]))).toEqual([]);
    expect(planOrder(benchWith([job(2, 1), job(1, 0)], { technicians: [] })).map(({ order }) => order)).toEqual([2, 2, 1, 1]);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %d minutes, a weight, a time and a budget of it", (bad) => {
    const broken = [
      benchWith([benchJob(1, routeOfSteps(work("inspect", bad)))]),
      benchWith([job(1, 60, bad)]),
      benchWith([benchJob(1, short, { releaseAt: instant(bad) })]),
      benchWith([benchJob(1, short, { dueAt: instant(bad) })]),
      benchWith([job(1, 60)], { now: instant(bad) }),
    ];
    for (const snapshot of broken) expect(() => planOrder(snapshot)).toThrow(DomainError);
    expect(() => planOrder(benchWith([]), { schedules: bad, seed: 1 })).toThrow(DomainError);
  });

  it("refuses steps that wait for each other", () => {
    const circle = routeOfSteps(work("bond", 1, { after: ["grip"] }), work("grip", 1, { after: ["bond"] }));
    expect(() => planOrder(benchWith([benchJob(1, circle)]))).toThrow(expect.objectContaining({ code: "route-has-a-cycle" }));
  });
});
