import type { BenchModel, ModelStep } from "./benchModel.ts";
import type { DispatchRule, Policy } from "./policy.ts";

/** How much a step is to be preferred at a moment: the highest goes first. Times in ms after the snapshot's now. */
export type Priority = (step: ModelStep, nowMs: number) => number;

/** How many mean jobs ahead a due time begins to press. */
const LOOK_AHEAD = 2;

/**
 * The apparent tardiness cost of starting a step, as a logarithm.
 *
 *     ln w − ln p − max(0, due − t − tail) / (k · p̄)
 *
 * w weight, p hands-on work the job has left, tail the longest way from the step to the club in the player's hand, p̄
 * the mean hands-on work of a job, k = 2. A job without a due time is due at roll-out, or a day from now.
 *
 * @see Vepsalainen & Morton, Priority rules for job shops with weighted tardiness costs, Management Science 33 (1987)
 */
function apparentCost({ meanHandsOnMs }: BenchModel): Priority {
  const perMs = 1 / (LOOK_AHEAD * meanHandsOnMs);
  return (step, nowMs) => (step.latestMs > nowMs ? step.job.logPressure - (step.latestMs - nowMs) * perMs : step.job.logPressure);
}

/** Steps as the plan has them; what it does not know comes last. */
function planned(model: BenchModel, { planOrder }: Policy): Priority {
  const nameOf = (order: number, job: number, place: number): string => `${order}/${job}/${place}`;
  const ranks = new Map(planOrder.map(({ order, job, place }, rank) => [nameOf(order, job, place), rank]));
  const rankOf = new Map(model.steps.map((step) => [step, ranks.get(nameOf(step.job.source.order, step.job.source.job, step.place))]));
  return (step) => -(rankOf.get(step) ?? Number.MAX_SAFE_INTEGER);
}

const rules: Readonly<Record<DispatchRule, (model: BenchModel, policy: Policy) => Priority>> = {
  due: () => (step) => -step.job.dueMs,
  slack: () => (step) => -step.latestMs,
  cost: apparentCost,
  plan: planned,
  queue: () => (step) => -step.job.arrival,
};

/** The priority by which a policy starts work; equal ones go by the longest way left. */
export const priorityOf = (policy: Policy, model: BenchModel): Priority => rules[policy.rule](model, policy);
