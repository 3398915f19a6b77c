import { inRange } from "../quantity/inRange.ts";
import { type Degrees, type Millimetres, millimetres } from "../quantity/units.ts";

/**
 * How far up the shaft from the ground the centre of a soled head lies.
 *
 *     s = (z − d·cos L) / sin L
 *
 * Zero where the shaft axis meets the ground. Plane geometry in the plane of shaft and heel–toe line, exact; 1 mm of z is
 * 1.1 to 1.2 mm of s. Below 0 the centre is past the end of the measured length.
 *
 * @param height - z of the centre above the ground in mm, 0 to 150
 * @param fromAxis - d from the centre to the shaft axis, square to it, in mm, 0 to 200
 * @param lie - L at which the head is soled, in degrees, 40 to 90
 * @returns mm
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/headCentreUpShaft.json
 */
export function headCentreUpShaft(height: Millimetres, fromAxis: Millimetres, lie: Degrees): Millimetres {
  const heightMm = inRange(height, { field: "headCentreHeightMm", unit: "mm", min: 0, max: 150 });
  const fromAxisMm = inRange(fromAxis, { field: "headFromAxisMm", unit: "mm", min: 0, max: 200 });
  const lieRad = (inRange(lie, { field: "soledLieDeg", unit: "deg", min: 40, max: 90 }) * Math.PI) / 180;
  return millimetres((heightMm - fromAxisMm * Math.cos(lieRad)) / Math.sin(lieRad));
}
