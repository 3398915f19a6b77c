import { type ScheduledStep, simulateOnce } from "./benchSimulation.ts";
import type { BenchSnapshot } from "./benchTypes.ts";
import { checkedDraw } from "./checkedBench.ts";
import type { Pace } from "./pace.ts";
import type { Policy } from "./policy.ts";

/** The same pace without its spreads: every step takes its median, as far as it was learned. */
const medians = ({ learned }: Pace): Pace => ({
  spreads: { step: 0, job: 0, wait: 0 },
  learned: learned.map((stage) => ({ ...stage, beta: 0 })),
});

/**
 * The rest of the day if everything takes its median: what a board shows, and what is next.
 *
 * @param question - the bench, how it is run and what was learned of its pace
 * @returns each unfinished step of each job that is not held, with its times and hands
 * @throws {DomainError} as `simulateOnce`
 */
export function medianDay(question: { readonly snapshot: BenchSnapshot; readonly policy: Policy; readonly pace: Pace }): readonly ScheduledStep[] {
  checkedDraw(question.pace, 0, 0);
  return simulateOnce({ ...question, pace: medians(question.pace), seed: 0, sample: 0 });
}
