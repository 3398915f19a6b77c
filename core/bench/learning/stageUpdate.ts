import type { StagePace } from "../pace.ts";
import type { StageSeen } from "./presses.ts";

/** A job's factor as far as its stages tell: mean and variance of its logarithm. */
export interface JobFactor {
  readonly mean: number;
  readonly variance: number;
}

/** Before anything is seen the route's own minutes count as so many steps seen, the fixed spread as so many degrees of freedom. */
const PRIOR_STEPS = 4;
const PRIOR_FREEDOM = 8;

/** The pace of a stage of which nothing is seen: about the route's own minutes, one step's variance on average that of the fixed spread. */
export function priorPace({ work, stage }: Pick<StagePace, "work" | "stage">, stepSpread: number): StagePace {
  const alpha = PRIOR_FREEDOM / 2;
  return { work, stage, mean: 0, kappa: PRIOR_STEPS, alpha, beta: ((alpha - 1) * stepSpread ** 2 * PRIOR_STEPS) / (PRIOR_STEPS + 1) };
}

/** Variance of one step, as the rows of a stage are weighed by. */
export const stepVariance = ({ beta, alpha }: StagePace): number => beta / alpha;

/** The mean of several spread steps lies above their median: ln of the mean of log-normals, less half the variance that is left in it. */
export const freedOfMean = ({ logPace, spreadShare }: StageSeen, pace: StagePace): number =>
  logPace - (stepVariance(pace) * (1 - spreadShare ** 2)) / 2;

/**
 * The normal-inverse-gamma of a stage after its rows, each varying by c times a step's spread and by its job's factor.
 *
 *     v = 1/(c² + τ²/σ²);   κ = κ₀ + Σv;   mean = Σv·y/κ;   α = α₀ + n/2
 *     β = β₀ + ½·Σ((y − mean − J)² + Var J)/c² + ½·κ₀·mean²
 *
 * @param now - the pace as estimated so far: its σ² weighs the rows
 * @param jobVariance - τ²
 * @param factorOf - J of each row's job; 0 without spread when jobs do not differ
 */
export function stageUpdate(
  rows: readonly StageSeen[],
  { prior, now, jobVariance }: { readonly prior: StagePace; readonly now: StagePace; readonly jobVariance: number },
  factorOf: (row: StageSeen) => JobFactor,
): StagePace {
  let kappa = prior.kappa;
  let sum = prior.kappa * prior.mean;
  for (const row of rows) {
    const weight = 1 / (row.spreadShare ** 2 + jobVariance / stepVariance(now));
    kappa += weight;
    sum += weight * freedOfMean(row, now);
  }
  const mean = sum / kappa;
  let beta = prior.beta + (prior.kappa * (mean - prior.mean) ** 2) / 2;
  for (const row of rows) {
    const factor = factorOf(row);
    beta += ((freedOfMean(row, now) - mean - factor.mean) ** 2 + factor.variance) / (2 * row.spreadShare ** 2);
  }
  return { ...prior, mean, kappa, alpha: prior.alpha + rows.length / 2, beta };
}
