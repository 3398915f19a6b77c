import type { Spreads } from "./benchTypes.ts";

/** From one press to the next: Start, Glue on, Done, final check passed. A route without glue begins with `toDone`. */
export const stages = ["toGlue", "toDone", "check"] as const;
export type Stage = (typeof stages)[number];

/**
 * What is known of the pace of one stage of one kind of work: the logarithm of the factor on a step's median minutes is
 * normal, its mean and variance themselves unknown (normal-inverse-gamma).
 *
 *     σ² ~ IG(α, β);   μ | σ² ~ N(mean, σ²/κ);   ln factor of a step ~ N(μ, σ²)
 */
export interface StagePace {
  /** Such as `build driver`. */
  readonly work: string;
  readonly stage: Stage;
  readonly mean: number;
  readonly kappa: number;
  readonly alpha: number;
  readonly beta: number;
}

/** How long work takes beside its route's minutes: fixed spreads, and what presses have taught of some stages. */
export interface Pace {
  readonly spreads: Spreads;
  readonly learned: readonly StagePace[];
}

/**
 * The spreads every estimate uses until presses have taught better: 25 % a step, 10 % a job, 10 % a wait, as standard deviations of the logarithm.
 *
 * Common practice, no source; fixed once, never bent to meet a quoted time.
 */
export const defaultSpreads: Spreads = { step: 0.25, job: 0.1, wait: 0.1 };

/** The pace of a shop that has learned nothing yet. */
export const defaultPace: Pace = { spreads: defaultSpreads, learned: [] };
