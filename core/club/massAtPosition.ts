import { inRange } from "../quantity/inRange.ts";
import { FULCRUM_MM, GRAM_MM_PER_POINT } from "../quantity/swingWeightScale.ts";
import { type Grams, grams, type Millimetres, type SwingWeightPoints, swingWeightPoints } from "../quantity/units.ts";

/** Nearer to the fulcrum than this no mass moves the scale. */
const SHORTEST_ARM_MM = 0.1;

const armOf = (fromCap: Millimetres): number => inRange(fromCap, { field: "fromCapMm", unit: "mm", min: 0, max: 2000 }) - FULCRUM_MM;

/**
 * How far a mass added at a place moves the swing weight.
 *
 *     Δp = m · (x − 14 in) / 49.6117 g·in
 *
 * Exact on the 14-inch scale. Above the fulcrum (in the grip) it is negative.
 *
 * @param mass - m in g, negative when it is taken off, 2000 either way
 * @param fromCap - x in mm from the end of the grip cap, 0 to 2000
 * @returns points
 * @throws {DomainError} `quantity-out-of-range` when either is impossible
 * @see fixtures/published/swingWeightSensitivity.json
 */
export function pointsOfMass(mass: Grams, fromCap: Millimetres): SwingWeightPoints {
  const massG = inRange(mass, { field: "massG", unit: "g", min: -2000, max: 2000 });
  return swingWeightPoints((massG * armOf(fromCap)) / GRAM_MM_PER_POINT);
}

/**
 * The mass at a place that is worth one point of swing weight.
 *
 *     m = 49.6117 g·in / |x − 14 in|
 *
 * Exact on the 14-inch scale; grows without bound at the fulcrum.
 *
 * @param fromCap - x in mm from the end of the grip cap, 0 to 2000
 * @returns g a point, always positive
 * @throws {DomainError} `quantity-out-of-range` when x is impossible or within 0.1 mm of the fulcrum
 * @see fixtures/published/swingWeightSensitivity.json
 */
export function gramsPerPoint(fromCap: Millimetres): Grams {
  const armMm = inRange(Math.abs(armOf(fromCap)), { field: "fromFulcrumMm", unit: "mm", min: SHORTEST_ARM_MM });
  return grams(GRAM_MM_PER_POINT / armMm);
}
