import type { Degrees } from "../quantity/units.ts";
import type { BareHead } from "./attitudeOf.ts";
import { faceNormal } from "./faceNormal.ts";
import { inDegrees } from "./radians.ts";
import { shaftDirection } from "./shaftDirection.ts";
import { NO_TILT, type SleeveTilt } from "./sleeveTilt.ts";
import { combined, dot } from "./vector.ts";

/** A head held by its shaft on the design axis, neither soled nor squared. */
interface ReturnedAttitude {
  readonly returnedLoftDeg: Degrees;
  /** Open positive. */
  readonly returnedFaceDeg: Degrees;
}

/**
 * Loft and face of a head when its leaned shaft is taken straight back to the design axis, without any roll about it.
 *
 *     n' = n − (s + b)·n/(1 + s·b) · (s + b) + 2 (s·n) b     loft = asin n'_z     face = atan2(−n'_y, n'_x)
 *
 * The smallest rotation that brings the shaft's direction s onto b = (0, cos L, sin L). A third view of the same club,
 * beside soled and squared. Exact. Of a head of face 0, loft gains about τ·cos φ·sin L, and the face closes by about
 * τ·(cos φ·cos L + sin φ·tan l): within 0.02° and 0.03° at a tilt of 2° and lofts up to 20°.
 *
 * @param head - soled loft, soled face (open positive) and design lie L in degrees, at zero tilt
 * @param tilt - tilt τ of the bore and its place on the clock in degrees
 * @returns loft and face (open positive) in degrees, the shaft at the design lie
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `quantity-unreadable` when the hand is none
 * @see fixtures/published/sleeveSensitivity.json
 */
export function returnedAttitude(head: BareHead, tilt: SleeveTilt): ReturnedAttitude {
  const normal = faceNormal(head.soledLoftDeg, head.soledFaceDeg);
  const shaft = shaftDirection(head.designLieDeg, tilt, head.hand);
  const axis = shaftDirection(head.designLieDeg, NO_TILT, head.hand);
  const between = combined([1, shaft], [1, axis]);
  const [toTarget, toPlayer, up] = combined([1, normal], [-dot(between, normal) / (1 + dot(shaft, axis)), between], [2 * dot(shaft, normal), axis]);
  return { returnedLoftDeg: inDegrees(Math.asin(up)), returnedFaceDeg: inDegrees(Math.atan2(-toPlayer, toTarget)) };
}
