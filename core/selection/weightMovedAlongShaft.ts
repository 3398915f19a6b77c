import { inRange } from "../quantity/inRange.ts";
import { GRAM_MM_PER_POINT } from "../quantity/swingWeightScale.ts";
import { type Grams, type Millimetres, type SwingWeightPoints, swingWeightPoints } from "../quantity/units.ts";

/**
 * How far a weight that is moved along the shaft moves the swing weight.
 *
 *     Δp = m · d / 49.6117 g·in
 *
 * Exact on the 14-inch scale, wherever the move starts. Between ports at one height along the shaft it is nothing,
 * however far apart they are towards the back or the toe.
 *
 * @param moved - m in g
 * @param awayFromCap - d in mm, positive away from the grip cap
 * @returns points
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/centreOfMassShift.json
 */
export function weightMovedAlongShaft(moved: Grams, awayFromCap: Millimetres): SwingWeightPoints {
  const movedG = inRange(moved, { field: "movedG", unit: "g", min: 0, max: 2000 });
  const distanceMm = inRange(awayFromCap, { field: "awayFromCapMm", unit: "mm", min: -2000, max: 2000 });
  return swingWeightPoints((movedG * distanceMm) / GRAM_MM_PER_POINT);
}
