import type { ModelStep } from "./benchModel.ts";

/** How many mean jobs ahead a due time begins to press. */
const LOOK_AHEAD = 2;

/**
 * How urgent it is to start a step: the apparent tardiness cost of its job, as a logarithm.
 *
 *     ln w − ln p − max(0, due − t − tail) / (k · p̄)
 *
 * w weight, p hands-on work the job has left, tail the longest way from the step to the club in the player's hand, p̄
 * the mean hands-on work of a job, k = 2. A job without a due time is due at roll-out, or a day from now. A rule of
 * thumb: no plan is optimised.
 *
 * @param step - ready to start
 * @param nowMs - t, ms after the snapshot's now
 * @param meanHandsOnMs - p̄ in ms
 * @see Vepsalainen & Morton, Priority rules for job shops with weighted tardiness costs, Management Science 33 (1987)
 */
export function urgency(step: ModelStep, nowMs: number, meanHandsOnMs: number): number {
  const { job } = step;
  const slackMs = Math.max(0, job.dueMs - nowMs - step.tailMs);
  return job.logWeight - job.logHandsOnLeft - slackMs / (LOOK_AHEAD * meanHandsOnMs);
}
