import type { Degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { radians } from "./radians.ts";
import type { Vector } from "./vector.ts";

/**
 * Where the face of a soled head looks, as a unit vector.
 *
 *     n = (cos l·cos f, −cos l·sin f, sin l)
 *
 * Exact at the centre of the face; bulge and roll turn it by about 0.2° a millimetre away from there.
 *
 * @param soledLoftDeg - l in degrees
 * @param soledFaceDeg - f in degrees, open positive in either hand
 * @returns x to the target, y to the player, z up
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible
 * @see fixtures/published/sleeveGeometry.json
 */
export function faceNormal(soledLoftDeg: Degrees, soledFaceDeg: Degrees): Vector {
  const loft = radians(angleInRange(soledLoftDeg, "loft", "soledLoftDeg"));
  const face = radians(angleInRange(soledFaceDeg, "face", "soledFaceDeg"));
  return [Math.cos(loft) * Math.cos(face), -Math.cos(loft) * Math.sin(face), Math.sin(loft)];
}
