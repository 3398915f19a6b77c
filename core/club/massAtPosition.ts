import { DomainError } from "../errors.ts";
import { inRange } from "../quantity/inRange.ts";
import { FULCRUM_MM, GRAM_MM_PER_POINT } from "../quantity/swingWeightScale.ts";
import { type Grams, grams, type Millimetres, type SwingWeightPoints, swingWeightPoints } from "../quantity/units.ts";

/**
 * How far a mass added at a place moves the swing weight.
 *
 *     Δp = m · (x − 14 in) / 49.6117 g·in
 *
 * Exact on the 14-inch scale. Above the fulcrum (in the grip) it is negative.
 *
 * @param mass - m in g, negative when it is taken off
 * @param fromCap - x in mm from the end of the grip cap
 * @returns points
 * @throws {DomainError} `quantity-out-of-range` when either is not finite
 * @see fixtures/published/swingWeightSensitivity.json
 */
export function pointsOfMass(mass: Grams, fromCap: Millimetres): SwingWeightPoints {
  const massG = inRange(mass, { field: "massG", unit: "g" });
  const fromCapMm = inRange(fromCap, { field: "fromCapMm", unit: "mm" });
  return swingWeightPoints((massG * (fromCapMm - FULCRUM_MM)) / GRAM_MM_PER_POINT);
}

/**
 * The mass at a place that is worth one point of swing weight.
 *
 *     m = 49.6117 g·in / |x − 14 in|
 *
 * Exact on the 14-inch scale; grows without bound at the fulcrum.
 *
 * @param fromCap - x in mm from the end of the grip cap
 * @returns g a point, always positive
 * @throws {DomainError} `quantity-out-of-range` when x is not finite or is at the fulcrum
 * @see fixtures/published/swingWeightSensitivity.json
 */
export function gramsPerPoint(fromCap: Millimetres): Grams {
  const armMm = Math.abs(inRange(fromCap, { field: "fromCapMm", unit: "mm" }) - FULCRUM_MM);
  if (armMm === 0) {
    throw new DomainError("quantity-out-of-range", { field: "fromCapMm", value: fromCap, unit: "mm" });
  }
  return grams(GRAM_MM_PER_POINT / armMm);
}
