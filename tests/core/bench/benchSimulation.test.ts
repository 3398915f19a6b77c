import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ScheduledStep, simulateOnce } from "../../../core/bench/benchSimulation.ts";
import type { BenchSnapshot, BenchStep } from "../../../core/bench/benchTypes.ts";
import { defaultPace } from "../../../core/bench/pace.ts";
import { defaultPolicy } from "../../../core/bench/policy.ts";
import { byLaw } from "../../support/checkOf.ts";
import { benchJob, benchStep, benchWith, hands, inMinutes, minutesFromNow, routeOfSteps, work } from "./benchBuilders.ts";
import { anyBench, openBench } from "./randomBench.ts";

const seed = fc.integer();
const RUNS = { numRuns: 300, seed: 20_270_503 };
const noSpreads = { step: 0, job: 0, wait: 0 };

/** A step that was done or will be, with the times it has: null is never. */
interface Timed extends ScheduledStep {
  readonly from: number;
  readonly to: number;
}

const timed = (schedule: readonly ScheduledStep[]): readonly Timed[] =>
  schedule.map((step) => ({ ...step, from: step.startAt ?? Number.POSITIVE_INFINITY, to: step.endAt ?? Number.POSITIVE_INFINITY }));
const started = (schedule: readonly ScheduledStep[]): readonly Timed[] => timed(schedule).filter((step) => step.startAt !== null);
const handsOn = (step: Timed): boolean => !step.route.unattended;
const atWork = (steps: readonly Timed[], at: number): readonly Timed[] => steps.filter((step) => handsOn(step) && step.from <= at && at < step.to);
const sourceOf = (bench: BenchSnapshot, step: ScheduledStep): BenchStep | undefined =>
  bench.jobs.find((job) => job.order === step.order && job.job === step.job)?.steps[step.place];

function predecessors(all: readonly Timed[], step: Timed): readonly Timed[] {
  return all.filter((other) => other.order === step.order && other.place !== step.place && step.route.after.includes(other.route.kind));
}

function overlapsOpen(bench: BenchSnapshot, step: Timed): boolean {
  const edges = [step.from, ...bench.open.flatMap(({ from, to }) => [from, to])].filter((at) => step.from <= at && at < step.to);
  return edges.every((at) => bench.open.some(({ from, to }) => from <= at && at < to));
}

describe(
  byLaw(simulateOnce, "nothing before what it waits for, no person or station twice at once, no work outside opening hours or past roll-out"),
  () => {
    const forAll = (check: (bench: BenchSnapshot, steps: readonly Timed[], seed: number) => void, benches = anyBench): void => {
      fc.assert(
        fc.property(benches, seed, (bench, luck) => {
          check(bench, timed(simulateOnce({ snapshot: bench, policy: defaultPolicy, pace: defaultPace, seed: luck, sample: 3 })), luck);
        }),
        RUNS,
      );
    };

    it("starts a step only after all it waits for", () => {
      forAll((_, all) => {
        for (const step of started(all)) {
          if (!step.underWay) for (const earlier of predecessors(all, step)) expect(earlier.to).toBeLessThanOrEqual(step.from);
        }
      });
    });

    it("never has more technicians at work than there are, nor more clubs at a station than it holds", () => {
      forAll((bench, all) => {
        for (const { from } of started(all)) {
          const busy = atWork(all, from);
          expect(busy.length).toBeLessThanOrEqual(bench.technicians.length);
          for (const step of busy) {
            const here = busy.filter((other) => other.route.station === step.route.station);
            expect(here.length).toBeLessThanOrEqual(bench.stations[step.route.station]);
          }
        }
      });
    });

    it("does no hands-on work outside opening hours", () => {
      forAll((bench, all) => {
        for (const step of started(all)) if (handsOn(step) && !step.underWay) expect(overlapsOpen(bench, step)).toBe(true);
      });
    });

    it("lets nothing that is not under way run past roll-out", () => {
      forAll((bench, all) => {
        for (const step of started(all)) {
          if (bench.rollOutAt !== null && !step.underWay) expect(step.to).toBeLessThanOrEqual(bench.rollOutAt);
        }
      });
    });

    it("starts nothing before its job is released, nor before now", () => {
      forAll((bench, all) => {
        for (const step of started(all)) {
          const release = bench.jobs.find((job) => job.order === step.order)?.releaseAt ?? bench.now;
          if (!step.underWay) expect(step.from).toBeGreaterThanOrEqual(Math.max(bench.now, release));
        }
      });
    });

    it("gives every wait at least its floor, what was waited before counted", () => {
      forAll((bench, all) => {
        for (const step of started(all)) {
          const before = step.underWay ? 0 : (sourceOf(bench, step)?.workedMs ?? 0);
          expect(step.to - step.from + before).toBeGreaterThanOrEqual(step.route.floorMin * 60_000);
        }
      });
    });

    it("gives held jobs no time and the others the same as without them", () => {
      forAll((bench, all, luck) => {
        const without = { ...bench, jobs: bench.jobs.filter((job) => !job.held) };
        expect(all).toEqual(timed(simulateOnce({ snapshot: without, policy: defaultPolicy, pace: defaultPace, seed: luck, sample: 3 })));
      });
    });

    it("repeats itself for the same seed and sample", () => {
      forAll((bench, all, luck) =>
        expect(timed(simulateOnce({ snapshot: bench, policy: defaultPolicy, pace: defaultPace, seed: luck, sample: 3 }))).toEqual(all),
      );
    });

    it("finishes everything in a workshop that never closes", () => {
      forAll((_, all) => {
        for (const step of all) expect(step.endAt).not.toBeNull();
      }, openBench);
    });

    it("leaves no technician idle beside work that could be done", () => {
      forAll((bench, all) => {
        for (const step of all.filter((one) => handsOn(one) && !one.underWay)) {
          const release = bench.jobs.find((job) => job.order === step.order)?.releaseAt ?? bench.now;
          const ready = Math.max(bench.now, release, ...predecessors(all, step).map((earlier) => earlier.to));
          const moments = [ready, ...all.map((other) => other.to)].filter((at) => ready <= at && at < step.from);
          for (const at of moments) {
            const busy = atWork(all, at);
            const here = busy.filter((other) => other.route.station === step.route.station).length;
            expect(busy.length === bench.technicians.length || here === bench.stations[step.route.station]).toBe(true);
          }
        }
      }, openBench);
    });
  },
);

describe("simulateOnce on benches worked out by hand", () => {
  const ends = (bench: BenchSnapshot): readonly number[] =>
    simulateOnce({ snapshot: bench, policy: defaultPolicy, pace: { spreads: noSpreads, learned: [] }, seed: 1, sample: 0 }).map((step) =>
      minutesFromNow(step.endAt),
    );
  const tenMinutes = routeOfSteps(work("cut", 10));
  const two = [benchJob(1, tenMinutes), benchJob(2, tenMinutes)];

  it("works two jobs one after the other with one technician", () => {
    expect(ends(benchWith(two, { stations: { ...benchWith([]).stations, bench: 2 } }))).toEqual([10, 20]);
  });

  it("works them together with two technicians and two places", () => {
    expect(ends(benchWith(two, { technicians: hands(2) }))).toEqual([10, 10]);
  });

  it("works them one after the other with two technicians and one place", () => {
    expect(ends(benchWith(two, { technicians: hands(2), stations: { ...benchWith([]).stations, bench: 1 } }))).toEqual([10, 20]);
  });

  it("works during a wait", () => {
    const route = routeOfSteps(
      work("bond", 1),
      work("bondSet", 6, { unattended: true, floorMin: 6, after: ["bond"] }),
      work("pullHead", 4),
      work("headOn", 1, { after: ["bondSet", "pullHead"] }),
    );
    expect(ends(benchWith([benchJob(1, route)]))).toEqual([1, 7, 5, 8]);
  });

  it("leaves work that would not be finished by closing time for the next opening", () => {
    const open = [
      { from: inMinutes(60), to: inMinutes(120) },
      { from: inMinutes(0), to: inMinutes(9) },
    ];
    expect(ends(benchWith([benchJob(1, tenMinutes)], { open }))).toEqual([70]);
  });

  it("works over an interval that joins the next", () => {
    const open = [
      { from: inMinutes(0), to: inMinutes(9) },
      { from: inMinutes(9), to: inMinutes(30) },
    ];
    expect(ends(benchWith([benchJob(1, tenMinutes)], { open }))).toEqual([10]);
  });

  it("works through a short interval inside a longer one", () => {
    const open = [
      { from: inMinutes(0), to: inMinutes(30) },
      { from: inMinutes(2), to: inMinutes(5) },
    ];
    expect(ends(benchWith([benchJob(1, tenMinutes)], { open }))).toEqual([10]);
  });

  it("lets a wait run on after closing time", () => {
    const route = routeOfSteps(work("bond", 5), work("bondSet", 20, { unattended: true, after: ["bond"] }));
    expect(ends(benchWith([benchJob(1, route)], { open: [{ from: inMinutes(0), to: inMinutes(6) }] }))).toEqual([5, 25]);
  });

  it("does nothing without opening hours, technicians or the station", () => {
    const never = [Number.POSITIVE_INFINITY];
    const jobs = [benchJob(1, tenMinutes)];
    expect(ends(benchWith(jobs, { open: [] }))).toEqual(never);
    expect(ends(benchWith(jobs, { technicians: hands(0) }))).toEqual(never);
    expect(ends(benchWith(jobs, { stations: { ...benchWith([]).stations, bench: 0 } }))).toEqual(never);
  });

  it("keeps the work done before a pause", () => {
    const paused = benchJob(1, tenMinutes, { steps: [benchStep(work("cut", 10), { state: "paused", workedMs: 7 * 60_000 })] });
    expect(ends(benchWith([paused]))).toEqual([3]);
  });

  it("counts both the time before a pause and the time since the step was taken up again", () => {
    const step = benchStep(work("cut", 10), { state: "running", workedMs: 4 * 60_000, startedAt: inMinutes(-3) });
    expect(ends(benchWith([benchJob(1, tenMinutes, { steps: [step] })]))).toEqual([3]);
  });

  it("starts the job first that weighs more when both are due alike", () => {
    const due = { dueAt: inMinutes(15) };
    const jobs = [benchJob(1, tenMinutes, { ...due, weight: 1 }), benchJob(2, tenMinutes, { ...due, weight: 5 })];
    expect(ends(benchWith(jobs))).toEqual([20, 10]);
  });

  it("starts the job first that is due soon when both weigh alike", () => {
    const jobs = [benchJob(1, tenMinutes, { dueAt: inMinutes(300) }), benchJob(2, tenMinutes, { dueAt: inMinutes(15) })];
    expect(ends(benchWith(jobs))).toEqual([20, 10]);
  });

  it("starts a player's club on the range before a heavier backup for another day", () => {
    const jobs = [benchJob(1, tenMinutes, { weight: 3, dueAt: inMinutes(1400) }), benchJob(2, tenMinutes, { weight: 1, dueAt: inMinutes(12) })];
    expect(ends(benchWith(jobs))).toEqual([20, 10]);
  });
});
