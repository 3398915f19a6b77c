import { type Id, type Instant, instant } from "../kinds.ts";
import { benchModel, type ModelStep } from "./benchModel.ts";
import { BenchRun } from "./benchRun.ts";
import type { BenchSnapshot, RouteStep } from "./benchTypes.ts";
import { checkedDraw } from "./checkedBench.ts";
import { drawDurations } from "./drawDurations.ts";
import type { Pace } from "./pace.ts";
import type { Policy } from "./policy.ts";

/** One step as it went in one sample; null is not before the truck leaves. A step under way keeps its real start. */
export interface ScheduledStep {
  readonly order: Id<"order">;
  readonly job: number;
  /** Place among the job's steps. */
  readonly place: number;
  readonly route: RouteStep;
  readonly underWay: boolean;
  /** Who does it; null for a wait, and where nobody is known to. */
  readonly person: Id<"person"> | null;
  readonly startAt: Instant | null;
  readonly endAt: Instant | null;
}

function scheduled(step: ModelStep, snapshot: BenchSnapshot): readonly ScheduledStep[] {
  const source = step.job.source;
  const route = source.steps[step.place]?.route;
  const at = (ms: number): Instant | null => (Number.isFinite(ms) ? instant(snapshot.now + ms) : null);
  if (route === undefined) return [];
  return [
    {
      order: source.order,
      job: source.job,
      place: step.place,
      route,
      underWay: step.running,
      person: step.technician?.person ?? null,
      startAt: at(step.startMs),
      endAt: at(step.endMs),
    },
  ];
}

/** A day to simulate: the bench, how it is run, how long things take, and which sample of the seed. */
export interface DayQuestion {
  readonly snapshot: BenchSnapshot;
  readonly policy: Policy;
  readonly pace: Pace;
  /** 32-bit integer. */
  readonly seed: number;
  /** Counts from 0; the same seed and sample repeat the same day. */
  readonly sample: number;
}

/**
 * One possible rest of the day: when each unfinished step of each job that is not held starts and ends, and in whose hands.
 *
 * A hands-on step takes one technician who has its skill and one place at its station, and starts only when it will be finished
 * before closing time, before that technician is away and before roll-out. Whoever comes from the same step of another club of the order
 * needs no setting up. A wait takes neither hand nor place (the club stands in a rack), starts as soon as it may and runs
 * on after closing, not past roll-out. A step under way is finished whatever the hour. Nothing is interrupted.
 *
 * @param question - the bench with whole capacities, the policy, the pace, seed and sample
 * @returns the steps in the order of their jobs, times in epoch ms
 * @throws {DomainError} `route-has-a-cycle` when steps of a job wait for each other
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 */
export function simulateOnce({ snapshot, policy, pace, seed, sample }: DayQuestion): readonly ScheduledStep[] {
  checkedDraw(pace, seed, sample);
  const model = benchModel(snapshot);
  drawDurations(model, pace, seed, sample);
  new BenchRun(model, policy).run();
  return model.steps.flatMap((step) => scheduled(step, snapshot));
}
