import { type Id, type Instant, instant } from "../kinds.ts";
import { type BenchModel, benchModel, type ModelStep } from "./benchModel.ts";
import { BenchRun } from "./benchRun.ts";
import type { BenchSnapshot, RouteStep, Spreads } from "./benchTypes.ts";
import { checkedDraw } from "./checkedBench.ts";
import { drawDurations } from "./drawDurations.ts";

/**
 * The spreads every estimate uses: 25 % a step, 10 % a job, 10 % a wait, as standard deviations of the logarithm.
 *
 * Common practice, no source; fixed once, never bent to meet a quoted time.
 */
export const defaultSpreads: Spreads = { step: 0.25, job: 0.1, wait: 0.1 };

/** One step as it went in one sample; null is not before the truck leaves. A step under way keeps its real start. */
export interface ScheduledStep {
  readonly order: Id<"order">;
  readonly job: number;
  /** Place among the job's steps. */
  readonly place: number;
  readonly route: RouteStep;
  readonly underWay: boolean;
  readonly startAt: Instant | null;
  readonly endAt: Instant | null;
}

/** One sample of the rest of the day: draws the durations and lets the bench run until nothing can be done any more. */
export function runSample(model: BenchModel, spreads: Spreads, seed: number, sample: number): void {
  drawDurations(model, spreads, seed, sample);
  new BenchRun(model).run();
}

function scheduled(step: ModelStep, snapshot: BenchSnapshot): readonly ScheduledStep[] {
  const source = step.job.source;
  const route = source.steps[step.place]?.route;
  const at = (ms: number): Instant | null => (Number.isFinite(ms) ? instant(snapshot.now + ms) : null);
  if (route === undefined) return [];
  return [
    { order: source.order, job: source.job, place: step.place, route, underWay: step.running, startAt: at(step.startMs), endAt: at(step.endMs) },
  ];
}

/**
 * One possible rest of the day: when each unfinished step of each job that is not held starts and ends.
 *
 * A hands-on step takes one technician and one place at its station, and starts only when it will be finished before
 * closing time and before roll-out. A wait takes neither (the club stands in a rack), starts as soon as it may and runs
 * on after closing, not past roll-out. A step under way is finished whatever the hour. Nothing is interrupted.
 *
 * @param snapshot - the bench; capacities are whole numbers
 * @param spreads - standard deviations of log-durations
 * @param seed - 32-bit integer
 * @param sample - counts from 0; the same seed and sample repeat the same day
 * @returns the steps in the order of their jobs, times in epoch ms
 * @throws {DomainError} `route-has-a-cycle` when steps of a job wait for each other
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 */
export function simulateOnce(snapshot: BenchSnapshot, spreads: Spreads, seed: number, sample: number): readonly ScheduledStep[] {
  checkedDraw(spreads, seed, sample);
  const model = benchModel(snapshot);
  runSample(model, spreads, seed, sample);
  return model.steps.flatMap((step) => scheduled(step, snapshot));
}
