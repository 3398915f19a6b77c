import type { Id } from "../kinds.ts";
import type { StepRef } from "./benchTypes.ts";

/** Which work goes first: earliest due time, least slack, apparent tardiness cost, the order of an optimised plan, first come. */
export const dispatchRules = ["due", "slack", "cost", "plan", "queue"] as const;
export type DispatchRule = (typeof dispatchRules)[number];

/** How a bench is run: a rule, the plan it follows where that is the rule, and a technician it leaves without work. */
export interface Policy {
  readonly rule: DispatchRule;
  /** Steps from first to last; empty unless the rule is `plan`. */
  readonly planOrder: readonly StepRef[];
  readonly idle: Id<"person"> | null;
}

/** The policy of a bench nobody has simulated yet. */
export const defaultPolicy: Policy = { rule: "cost", planOrder: [], idle: null };
