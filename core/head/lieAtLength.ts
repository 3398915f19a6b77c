import { inRange } from "../quantity/inRange.ts";
import type { Degrees, Millimetres } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { inDegrees, radians } from "./radians.ts";

/**
 * The lie a club should have at another length for the hands to stay at their height.
 *
 *     lie' = asin( L · sin lie / (L + ΔL) )
 *
 * Exact for a straight shaft and hands that do not move. The club's measured lie does not change with its length: a
 * longer club only plays upright, by lie − lie'. A degree for half an inch holds for a driver; an iron takes 1.4°, a
 * wedge 1.6°. Under impact the shaft droops and the hands rise, which this leaves out.
 *
 * @param length - L in mm, sole to the end of the cap
 * @param seatedLie - lie at L in degrees
 * @param lengthChange - ΔL in mm, longer positive
 * @returns lie' in degrees
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or the club would be shorter than the hands are high
 * @see fixtures/published/lieAtLength.json
 */
export function lieAtLength(length: Millimetres, seatedLie: Degrees, lengthChange: Millimetres): Degrees {
  const lengthMm = inRange(length, { field: "lengthMm", unit: "mm", min: 200, max: 2000 });
  const lie = radians(angleInRange(seatedLie, "lie", "seatedLieDeg"));
  const changeMm = inRange(lengthChange, { field: "lengthChangeMm", unit: "mm", min: -150, max: 150 });
  const handHeightMm = lengthMm * Math.sin(lie);
  const newLengthMm = inRange(lengthMm + changeMm, { field: "newLengthMm", unit: "mm", min: handHeightMm });
  return inDegrees(Math.asin(handHeightMm / newLengthMm));
}
