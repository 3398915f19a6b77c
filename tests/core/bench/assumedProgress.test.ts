import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assumedProgress } from "../../../core/bench/assumedProgress.ts";
import type { BenchJob, OpenInterval } from "../../../core/bench/benchTypes.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { id } from "../../../core/kinds.ts";
import { byLaw } from "../../support/checkOf.ts";
import { benchJob, benchStep, inMinutes, MIN, now } from "./benchBuilders.ts";

const dessa = id<"person">(7);
const driver = routeFor({ kind: "build", family: "driver", adjustable: true }, defaultFloors);
const iron = routeFor({ kind: "build", family: "iron", adjustable: false }, defaultFloors);

/** Start pressed so many minutes ago: the first step runs. */
const started = (minutesAgo: number, route = driver): BenchJob =>
  benchJob(1, route, {
    steps: route.steps.map((step, place) =>
      benchStep(step, place === 0 ? { state: "running", startedAt: inMinutes(-minutesAgo), person: dessa } : {}),
    ),
  });

/** Glue on pressed so many minutes ago: all before it done, the bond sets. */
const glued = (minutesAgo: number): BenchJob =>
  benchJob(1, driver, {
    steps: driver.steps.map((step) =>
      benchStep(
        step,
        ["pullParts", "tipPrepare", "dryFit", "bond"].includes(step.kind)
          ? { state: "done", finishedAt: inMinutes(-minutesAgo) }
          : step.kind === "bondSet"
            ? { state: "running", startedAt: inMinutes(-minutesAgo) }
            : {},
      ),
    ),
  });

const since = (minutesAgo: number): readonly OpenInterval[] => [{ from: inMinutes(-minutesAgo), to: now }];
const states = (job: BenchJob | undefined): Readonly<Record<string, string>> =>
  Object.fromEntries((job?.steps ?? []).filter(({ state }) => state !== "todo").map(({ route, state }) => [route.kind, state]));
const spentMin = (job: BenchJob | undefined, kind: string): number => {
  const step = job?.steps.find(({ route }) => route.kind === kind);
  return step?.startedAt == null ? Number.NaN : (now - step.startedAt + step.workedMs) / MIN;
};
const only = (jobs: readonly BenchJob[]): BenchJob | undefined => jobs[0];

describe("assumedProgress of a driver (minutes of the route: 1, 1.5, 0.5, 1, then 6 to set)", () => {
  it("is at the tip two minutes after Start", () => {
    const job = only(assumedProgress([started(2)], since(2), dessa, now));
    expect(states(job)).toEqual({ pullParts: "done", tipPrepare: "running" });
    expect(spentMin(job, "tipPrepare")).toBeCloseTo(1, 9);
  });

  it("has something in hand at the very moment of Start, and when a step is just over", () => {
    expect(states(only(assumedProgress([started(0)], since(0), dessa, now)))).toEqual({ pullParts: "running" });
    expect(states(only(assumedProgress([started(1)], since(1), dessa, now)))).toEqual({ pullParts: "done", tipPrepare: "running" });
  });

  it("never takes the last step of a stage as done: the press has not come", () => {
    const job = only(assumedProgress([started(30)], since(30), dessa, now));
    expect(states(job)).toEqual({ pullParts: "done", tipPrepare: "done", dryFit: "done", bond: "running" });
    expect(spentMin(job, "bond")).toBeCloseTo(27, 9);
  });

  it("works beside the glue and waits for it: head pulled, gauged, grip laid out, then head on", () => {
    expect(states(only(assumedProgress([glued(3.5)], since(3.5), dessa, now)))).toMatchObject({
      bondSet: "running",
      pullHead: "done",
      gaugeHead: "done",
      layOutGrip: "running",
    });
    const waiting = only(assumedProgress([glued(5)], since(5), dessa, now));
    expect(states(waiting)).toMatchObject({ layOutGrip: "done" });
    expect(states(waiting)).not.toHaveProperty("headOn");
    expect(states(only(assumedProgress([glued(6.25)], since(6.25), dessa, now)))).toMatchObject({ headOn: "running" });
  });

  it("pauses the step at hand while its technician is elsewhere", () => {
    const job = only(assumedProgress([started(10)], [{ from: inMinutes(-10), to: inMinutes(-8) }], dessa, now));
    expect(states(job)).toEqual({ pullParts: "done", tipPrepare: "paused" });
    expect(job?.steps.find(({ route }) => route.kind === "tipPrepare")?.workedMs).toBe(MIN);
  });

  it("leaves an order nobody has begun as it is", () => {
    const jobs = [benchJob(1, driver)];
    expect(assumedProgress(jobs, since(10), dessa, now)).toBe(jobs);
  });

  it("goes through a set station by station", () => {
    const [first, second] = assumedProgress([started(1.5, iron), benchJob(1, iron, { job: 2 })], since(1.5), dessa, now);
    expect(states(first)).toMatchObject({ pullParts: "done" });
    expect(states(second)).toMatchObject({ pullParts: "running" });
  });
});

describe(byLaw(assumedProgress, "no more hands-on work is done than there was time for"), () => {
  it("holds for any time since Start and any absence", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), (ago, leftAfter) => {
        const attended = [{ from: inMinutes(-ago), to: inMinutes(Math.min(0, -ago + leftAfter)) }];
        const job = only(assumedProgress([started(ago)], attended, dessa, now));
        const doneMin = (job?.steps ?? []).reduce((sum, { state, route }) => sum + (state === "done" && !route.unattended ? route.medianMin : 0), 0);
        expect(doneMin).toBeLessThanOrEqual(Math.min(ago, leftAfter) + 1e-9);
      }),
      { numRuns: 100 },
    );
  });
});
