/** One activity of a project; times in whole ms. */
export interface Activity {
  readonly durationMs: number;
  /** How much of each resource it takes while it runs. */
  readonly demands: readonly number[];
  /** Places of the activities that must be over before it starts. */
  readonly before: readonly number[];
  readonly releaseMs: number;
  /** When it should be over, and what a ms late costs; null when nobody waits for it. */
  readonly due: { readonly dueMs: number; readonly weight: number } | null;
  /** Only within opening hours, finished before they end. */
  readonly byHand: boolean;
  /** Activities of one group are moved together: the steps of one club. */
  readonly group: number;
}

/** Activities that share resources of limited capacity. */
export interface Project {
  readonly activities: readonly Activity[];
  readonly capacities: readonly number[];
  /** Opening hours apart and in order; null when it is always open. */
  readonly open: readonly { readonly fromMs: number; readonly toMs: number }[] | null;
}

export type Goal = "makespan" | "weightedTardiness";

export interface PlanBudget {
  /** How many schedules may be generated; a pass of justification counts as one. */
  readonly schedules: number;
  /** Whole number: the same seed gives the same plan. */
  readonly seed: number;
  readonly goal: Goal;
}

export interface Plan {
  /** When each activity starts; null where it never fits. */
  readonly startsMs: readonly (number | null)[];
  /** The makespan in ms, or the weighted tardiness in ms. */
  readonly value: number;
  /** Schedules generated. */
  readonly schedules: number;
}
