import type { Hand } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import type { Attitude } from "./attitude.ts";
import { faceNormal } from "./faceNormal.ts";
import { inDegrees, radians } from "./radians.ts";
import { shaftDirection } from "./shaftDirection.ts";
import { NO_TILT, type SleeveTilt } from "./sleeveTilt.ts";
import { dot } from "./vector.ts";

/** A head measured bare, at zero sleeve tilt; face open positive. */
export interface BareHead {
  readonly soledLoftDeg: Degrees;
  readonly soledFaceDeg: Degrees;
  readonly designLieDeg: Degrees;
  readonly hand: Hand;
}

function squaredLoft(normalAlongShaft: number, sineOfLie: number): Degrees {
  const sine = inRange(normalAlongShaft / sineOfLie, { field: "sine of the squared loft", unit: "", min: -1, max: 1 });
  return inDegrees(Math.asin(sine));
}

/**
 * Lie, soled face and squared loft of a head whose sleeve leans the shaft.
 *
 *     n = where the soled face looks,   s = where the shaft points
 *     seated lie = asin s_z     soled face = f − atan2(s_x, s_y)     squared loft at a lie h = asin( n·s / sin h )
 *
 * Soled: the head flat on its design sole, yawed until the shaft leans to neither side; its loft stays l. Squared:
 * rolled about the shaft at the lie h until the face looks at the target, which leaves n·s alone; h is the seated lie or
 * the design lie. Exact for a rigid head on a flat sole; a cambered sole, sleeve seating and bonding move a real club
 * by ±0.2°. A left-handed head is the mirror image: the same mark leans the other way round the clock, so what is
 * upright in one hand is flat in the other.
 *
 * Small tilts, in degrees: soled face −τ·cos φ/cos L, squared loft τ·cos φ/sin L, so that a degree of face is cot L of
 * loft (0.62 at 58°). The rule of one for one, common in print, overstates that by 60 % and is not followed here.
 *
 * @param head - soled loft l, soled face f (open positive) and design lie L in degrees, at zero tilt
 * @param tilt - tilt τ of the bore and its place on the clock in degrees: 0 to the target, 90 upright in the right hand
 * @returns squared loft at the seated and at the design lie, soled face (open positive) and seated lie in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible or the face cannot be squared,
 * `quantity-unreadable` when the hand is none
 * @see fixtures/published/sleeveGeometry.json
 */
export function attitudeOf(head: BareHead, tilt: SleeveTilt): Attitude {
  const shaft = shaftDirection(head.designLieDeg, tilt, head.hand);
  const [toTarget, toPlayer, up] = shaft;
  const normalAlongShaft = dot(faceNormal(head.soledLoftDeg, head.soledFaceDeg), shaft);
  return {
    squaredLoftDeg: squaredLoft(normalAlongShaft, up),
    squaredLoftAtDesignLieDeg: squaredLoft(normalAlongShaft, Math.sin(radians(head.designLieDeg))),
    soledFaceDeg: degrees(head.soledFaceDeg - inDegrees(Math.atan2(toTarget, toPlayer))),
    seatedLieDeg: inDegrees(Math.asin(up)),
  };
}

/**
 * The readings of a head whose shaft is bonded straight into the hosel, or sits in a sleeve without tilt.
 *
 *     seated lie = L     soled face = f     squared loft = asin( n·b / sin L ),   b = (0, cos L, sin L)
 *
 * The model and its accuracy are those of `attitudeOf` at zero tilt.
 *
 * @param head - measured bare, in degrees
 * @returns squared loft at the seated and at the design lie (here the same), soled face (open positive) and seated lie in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `quantity-unreadable` when the hand is none
 * @see fixtures/published/sleeveGeometry.json
 */
export function bondedAttitude(head: BareHead): Attitude {
  return attitudeOf(head, NO_TILT);
}
