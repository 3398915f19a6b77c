import { defaultSpreads } from "../pace.ts";
import type { StageSeen } from "./presses.ts";
import { stageMinutes } from "./stageMinutes.ts";
import type { StagePart, Way } from "./stageParts.ts";

/** Less than a quarter or more than four times the usual pace is a wrong press or a forgotten one. */
const FASTEST = 0.25;
const SLOWEST = 4;
/** A time that is mostly waiting says less of the work than a step and a half: it is left alone. */
const LEAST_TOLD = 1.5;
/** The search ends this near to the time seen, or after so many steps where the order of work jumps. */
const NEAR_MIN = 1e-9;
const MOST_STEPS = 60;

/** √(Σm² + Σ(w·σ_wait/σ_step)²)/Σm of the steps m and the waits w that bound the time; infinite when no work does. */
function spreadShareOf({ workMin, workSquares, waitSquares }: Way): number {
  const ratio = defaultSpreads.wait / defaultSpreads.step;
  return workMin > 0 ? Math.sqrt(workSquares + ratio ** 2 * waitSquares) / workMin : Number.POSITIVE_INFINITY;
}

/** The pace at which the stage takes the time seen: Newton's steps along the work that bounds it, halving where they leave the bracket. */
function explaining(minutesAt: (pace: number) => Way, seenMin: number): { readonly pace: number; readonly way: Way } {
  let low = FASTEST;
  let high = SLOWEST;
  let pace = 1;
  let way = minutesAt(pace);
  for (let step = 0; step < MOST_STEPS && Math.abs(seenMin - way.endMin) > NEAR_MIN; step++) {
    if (way.endMin < seenMin) low = pace;
    else high = pace;
    const newton = pace + (seenMin - way.endMin) / way.workMin;
    pace = newton > low && newton < high ? newton : (low + high) / 2;
    way = minutesAt(pace);
  }
  return { pace, way };
}

/**
 * The pace of hands-on work that explains the time seen of a stage; null when the time tells nothing of it.
 *
 * @param clubs - the stage's parts of each club of the order
 * @param seenMin - minutes between the two presses
 */
export function paceOfStage(clubs: readonly (readonly StagePart[])[], seenMin: number): Pick<StageSeen, "logPace" | "spreadShare"> | null {
  const minutesAt = (pace: number): Way => stageMinutes(clubs, pace);
  const spreadShare = spreadShareOf(minutesAt(1));
  if (spreadShare > LEAST_TOLD || seenMin < minutesAt(FASTEST).endMin || seenMin > minutesAt(SLOWEST).endMin) return null;
  const { pace, way } = explaining(minutesAt, seenMin);
  return way.workMin > 0 ? { logPace: Math.log(pace), spreadShare } : null;
}
