import type { RouteStep } from "../benchTypes.ts";
import { defaultSpreads, type Stage } from "../pace.ts";
import type { StageSeen } from "./presses.ts";
import { stageMinutes } from "./stageMinutes.ts";
import { stageParts, type Way } from "./stageParts.ts";

/** Less than a quarter or more than four times the usual pace is a wrong press or a forgotten one. */
const FASTEST = 0.25;
const SLOWEST = 4;
/** A time that is mostly waiting says less of the work than a step and a half: it is left alone. */
const LEAST_TOLD = 1.5;
const HALVINGS = 40;

/** √(Σm² + Σ(w·σ_wait/σ_step)²)/Σm of the steps m and the waits w that bound the time; infinite when no work does. */
function spreadShareOf({ workMin, workSquares, waitSquares }: Way): number {
  const ratio = defaultSpreads.wait / defaultSpreads.step;
  return workMin > 0 ? Math.sqrt(workSquares + ratio ** 2 * waitSquares) / workMin : Number.POSITIVE_INFINITY;
}

/**
 * The pace of hands-on work that explains the time seen of a stage, by bisection; null when the time tells nothing of it.
 *
 * @param clubs - the routes of the order's clubs
 * @param seenMin - minutes between the two presses
 */
export function paceOfStage(
  clubs: readonly (readonly RouteStep[])[],
  stage: Stage,
  seenMin: number,
): Pick<StageSeen, "logPace" | "spreadShare"> | null {
  const parts = clubs.map((route) => stageParts(route, stage));
  const spreadShare = spreadShareOf(stageMinutes(parts, 1));
  const minutesAt = (logPace: number): number => stageMinutes(parts, Math.exp(logPace)).endMin;
  let low = Math.log(FASTEST);
  let high = Math.log(SLOWEST);
  if (spreadShare > LEAST_TOLD || seenMin < minutesAt(low) || seenMin > minutesAt(high)) return null;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (minutesAt(middle) < seenMin) low = middle;
    else high = middle;
  }
  const logPace = (low + high) / 2;
  return stageMinutes(parts, Math.exp(logPace)).workMin > 0 ? { logPace, spreadShare } : null;
}
