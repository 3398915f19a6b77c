import { inRange } from "../quantity/inRange.ts";
import { type Degrees, type Millimetres, millimetres } from "../quantity/units.ts";
import { radians } from "./radians.ts";

/**
 * How far beside the target a direction comes out at a distance.
 *
 *     sideways = D · tan az
 *
 * Exact for a straight line; of a face's normal it is where the face looks, not where a ball lands.
 *
 * @param distance - D along the target line in mm
 * @param aimLeft - az in degrees, left positive
 * @returns mm, left positive
 * @throws {DomainError} `quantity-out-of-range` when the distance is below 0 or past 500 m, or the direction is past 85°
 * @see fixtures/published/lieError.json
 */
export function sidewaysAt(distance: Millimetres, aimLeft: Degrees): Millimetres {
  const distanceMm = inRange(distance, { field: "distanceMm", unit: "mm", min: 0, max: 500_000 });
  const aim = radians(inRange(aimLeft, { field: "aimLeftDeg", unit: "deg", min: -85, max: 85 }));
  return millimetres(distanceMm * Math.tan(aim));
}
