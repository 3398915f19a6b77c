import { inRange } from "../quantity/inRange.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { faceNormal } from "./faceNormal.ts";
import { inDegrees, radians } from "./radians.ts";
import { turnedAbout, type Vector } from "./vector.ts";

/** A head rolled about its shaft, lifted off its sole. */
interface RolledFace {
  readonly rolledLoftDeg: Degrees;
  /** Open positive. */
  readonly rolledFaceDeg: Degrees;
}

const FARTHEST_ROLL_DEG = 45;

/**
 * Loft and face of a squared head after the hands roll the shaft open.
 *
 *     n' = n turned about b = (0, cos L, sin L) by −ψ     loft = asin n'_z     face = atan2(−n'_y, n'_x)
 *
 * Exact. A degree of roll gives about sin L of face and cos L of loft: 0.85 and 0.53 at 58°. Soled readings do not
 * enter: the shaft stays at its lie and the sole leaves the ground.
 *
 * @param squaredLoftDeg - loft in degrees with the face to the target
 * @param heldLieDeg - lie L in degrees that the shaft keeps
 * @param rollDeg - ψ in degrees, open positive in either hand
 * @returns loft and face (open positive) in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible
 * @see fixtures/published/rolledFace.json
 */
export function rolledFace(squaredLoftDeg: Degrees, heldLieDeg: Degrees, rollDeg: Degrees): RolledFace {
  const squared = faceNormal(degrees(angleInRange(squaredLoftDeg, "loft", "squaredLoftDeg")), degrees(0));
  const lie = radians(angleInRange(heldLieDeg, "lie", "heldLieDeg"));
  const roll = radians(inRange(rollDeg, { field: "rollDeg", unit: "deg", min: -FARTHEST_ROLL_DEG, max: FARTHEST_ROLL_DEG }));
  const shaft: Vector = [0, Math.cos(lie), Math.sin(lie)];
  const [toTarget, toPlayer, up] = turnedAbout(shaft, squared, -roll);
  return { rolledLoftDeg: inDegrees(Math.asin(up)), rolledFaceDeg: inDegrees(Math.atan2(-toPlayer, toTarget)) };
}
