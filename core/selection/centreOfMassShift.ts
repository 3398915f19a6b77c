import { inRange } from "../quantity/inRange.ts";
import { type Grams, type Millimetres, millimetres } from "../quantity/units.ts";

const HEAVIEST_G = 2000;
const FARTHEST_MM = 500;

const distanceOf = (distance: Millimetres) => inRange(distance, { field: "distanceMm", unit: "mm", min: -FARTHEST_MM, max: FARTHEST_MM });

/**
 * How far the centre of mass of a head goes when a weight inside it is moved.
 *
 *     shift = m · d / M
 *
 * Exact; M includes the weight, and the shift is along the move.
 *
 * @param moved - m in g
 * @param distance - d in mm, signed
 * @param headMass - M in g, the weight included
 * @returns mm, of the sign of d
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or the weight is heavier than the head
 * @see fixtures/published/centreOfMassShift.json
 */
export function centreShiftByMoving(moved: Grams, distance: Millimetres, headMass: Grams): Millimetres {
  const headMassG = inRange(headMass, { field: "headMassG", unit: "g", min: 1, max: HEAVIEST_G });
  const movedG = inRange(moved, { field: "movedG", unit: "g", min: 0, max: headMassG });
  return millimetres((movedG * distanceOf(distance)) / headMassG);
}

/**
 * How far the centre of mass of a head goes when a weight is added to it.
 *
 *     shift = m · d / (M + m)
 *
 * Exact; d runs from the head's own centre of mass, the shift is towards the weight.
 *
 * @param added - m in g
 * @param distance - d in mm, signed
 * @param headMass - M in g, without the weight
 * @returns mm, of the sign of d
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/centreOfMassShift.json
 */
export function centreShiftByAdding(added: Grams, distance: Millimetres, headMass: Grams): Millimetres {
  const headMassG = inRange(headMass, { field: "headMassG", unit: "g", min: 1, max: HEAVIEST_G });
  const addedG = inRange(added, { field: "addedG", unit: "g", min: 0, max: HEAVIEST_G });
  return millimetres((addedG * distanceOf(distance)) / (headMassG + addedG));
}
