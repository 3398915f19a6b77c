import { inRange } from "../quantity/inRange.ts";
import { wholeNumber } from "../quantity/wholeNumber.ts";
import { normalQuantile } from "./standardNormal.ts";

/** Between which shares the true one lies, both from 0 to 1. */
export interface ShareInterval {
  readonly low: number;
  readonly high: number;
}

const MOST_TRIALS = 1e9;

/**
 * The Wilson score interval of a share: which true shares a count does not speak against.
 *
 *     ( p̂ + z²/2n ± z·√( p̂(1 − p̂)/n + z²/4n² ) ) / (1 + z²/n),   z = Φ⁻¹((1 + confidence)/2)
 *
 * The roots p of |p̂ − p| = z·√(p(1 − p)/n); never outside 0 to 1, of use from a single trial on. Holds its confidence on the average over
 * true shares, not for each of them.
 *
 * @param successes - how many of the trials, a whole number
 * @param trials - n, a whole number from 1
 * @param confidence - above 0 and below 1, such as 0.9
 * @returns both bounds as shares of 1
 * @throws {DomainError} `quantity-out-of-range` when a count is not whole, there are more successes than trials, or the confidence is none
 * @see fixtures/published/scoreIntervals.json
 */
export function wilsonInterval(successes: number, trials: number, confidence: number): ShareInterval {
  wholeNumber(trials, { field: "trials", min: 1, max: MOST_TRIALS });
  wholeNumber(successes, { field: "successes", min: 0, max: trials });
  inRange(confidence, { field: "confidence", unit: "", min: 0.01, max: 0.9999 });
  const share = successes / trials;
  const z = normalQuantile((1 + confidence) / 2);
  const part = (z * z) / trials;
  const centre = (share + part / 2) / (1 + part);
  const half = (z * Math.sqrt((share * (1 - share)) / trials + part / (4 * trials))) / (1 + part);
  return { low: successes === 0 ? 0 : centre - half, high: successes === trials ? 1 : centre + half };
}
