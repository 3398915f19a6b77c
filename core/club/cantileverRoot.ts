import { inRange } from "../quantity/inRange.ts";
import { firstPast } from "./firstPast.ts";

/** Above the root without a tip mass, 1.8751, and below the second root of any, 3.9266. */
const PAST_FIRST_ROOT = 2;

/**
 * First root β of a uniform cantilever with a point mass at its tip.
 *
 *     1 + cos β·cosh β + μ·β·(cos β·sinh β − sin β·cosh β) = 0,   μ = M/m
 *
 * Solved divided by cosh β, where nothing overflows. Exact Euler–Bernoulli theory, to 1e-12.
 *
 * @param massRatio - μ, tip mass over the mass of the free shaft
 * @returns β, without a unit
 * @throws {DomainError} `quantity-out-of-range` when μ is impossible
 * @see fixtures/published/cantileverTipMass.json
 */
export function cantileverRoot(massRatio: number): number {
  const mu = inRange(massRatio, { field: "massRatio", unit: "", min: 0, max: 1e5 });
  const left = (b: number) => 1 / Math.cosh(b) + Math.cos(b) + mu * b * (Math.cos(b) * Math.tanh(b) - Math.sin(b));
  return firstPast((b) => left(b) < 0, 0, PAST_FIRST_ROOT);
}
