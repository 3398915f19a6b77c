import { inRange } from "../../quantity/inRange.ts";
import type { StagePace } from "../pace.ts";
import { normalQuantile } from "../standardNormal.ts";
import { gammaQuantile } from "./gammaQuantile.ts";

/** The log pace of a stage's steps in one possible shop: ln factor of a step ~ N(location, spread²). */
interface DrawnStage {
  readonly location: number;
  readonly spread: number;
}

/** Below one a variance has no mean, nor has a chance of 0 or 1 a quantile. */
const LEAST_ALPHA = 1;
const LEAST_CHANCE = 1e-12;

/**
 * One location and spread out of what is known of a stage, from two uniform numbers: the same numbers give the same draw.
 *
 *     σ² = β / G⁻¹(u_spread; α);   μ = mean + σ/√κ · Φ⁻¹(u_mean)
 *
 * Exact draws of a normal-inverse-gamma; G is the gamma distribution of scale 1. A larger u_spread gives a smaller spread. Relative
 * error of σ below 1e-6.
 *
 * @param stage - mean, κ, α (at least 1) and β, of natural logarithms
 * @param uMean - above 0 and below 1
 * @param uSpread - above 0 and below 1
 * @returns μ and σ of the natural logarithm of a step's pace
 * @throws {DomainError} `quantity-out-of-range` when a number is not such
 * @see fixtures/published/chiSquareQuantiles.json
 */
export function drawStage(stage: StagePace, uMean: number, uSpread: number): DrawnStage {
  inRange(stage.mean, { field: "mean", unit: "", min: -5, max: 5 });
  inRange(stage.kappa, { field: "kappa", unit: "", min: 1e-6 });
  inRange(stage.alpha, { field: "alpha", unit: "", min: LEAST_ALPHA });
  inRange(stage.beta, { field: "beta", unit: "", min: 0 });
  inRange(uMean, { field: "uMean", unit: "", min: LEAST_CHANCE, max: 1 - LEAST_CHANCE });
  inRange(uSpread, { field: "uSpread", unit: "", min: LEAST_CHANCE, max: 1 - LEAST_CHANCE });
  const spread = Math.sqrt(stage.beta / gammaQuantile(stage.alpha, uSpread));
  return { location: stage.mean + (spread / Math.sqrt(stage.kappa)) * normalQuantile(uMean), spread };
}
