/** One activity of a project; times in whole ms. */
export interface Activity {
  readonly durationMs: number;
  /** How much of each resource it takes while it runs; with more than there is it never starts. */
  readonly demands: readonly number[];
  /** Places of the activities that must be over before it starts. */
  readonly before: readonly number[];
  readonly releaseMs: number;
  /** When it should be over, and what a ms late costs; null when nobody waits for it. */
  readonly due: { readonly dueMs: number; readonly weight: number } | null;
  /** Only within opening hours, finished before they end. */
  readonly byHand: boolean;
  /** It runs already: from 0 on, whatever it waits for and whatever else is taken. */
  readonly underWay: boolean;
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

/**
 * `makespan`: the end of the last activity. `weightedTardiness`: Σ w·(max(0, end − due) + end/1000) over the activities with a due time;
 * the small second term ends soon what is late alike.
 */
export const goals = ["makespan", "weightedTardiness"] as const;
type Goal = (typeof goals)[number];

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
  /** What the goal says, in ms; an activity that never fits counts two weeks. */
  readonly value: number;
  /** Schedules generated. */
  readonly schedules: number;
}
