import type { Hand } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import type { Degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { inDegrees, radians } from "./radians.ts";

/** Where a face looks when the club lies upright or flat at impact. */
export interface LieAim {
  /** Of the face's normal, left of the target line positive as the player looks. */
  readonly aimLeftDeg: Degrees;
  /** The loft that is left of it in the plane the face looks in. */
  readonly playedLoftDeg: Degrees;
  /** Where the face looks is not where the ball starts. */
  readonly note: "face-normal-not-ball-start";
}

/**
 * Where a square face looks when the club lies upright or flat at impact.
 *
 *     tan az = tan l · sin e     l' = asin( sin l · cos e )
 *
 * The face turned about the target line by the error e. Upright looks left with a right-handed club, right with a
 * left-handed one. Exact for the normal of a flat face, and no promise of a ball's flight: a ball starts about 85 %
 * (driver) or 75 % (irons) of the way to the normal when the path stays straight; turf twists the head, a shaft droops
 * 1 to 4° (from memory), a wood's face bulges.
 *
 * @param squaredLoft - l in degrees
 * @param lieError - e in degrees: lie at impact less the lie that sits flat, upright positive
 * @param hand - of the club
 * @returns azimuth of the face's normal, left positive, and the played loft in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible
 * @throws {DomainError} `quantity-unreadable` when the hand is neither
 * @see fixtures/published/lieError.json
 */
export function aimOfLieError(squaredLoft: Degrees, lieError: Degrees, hand: Hand): LieAim {
  const loft = radians(angleInRange(squaredLoft, "loft", "squaredLoftDeg"));
  const error = radians(inRange(lieError, { field: "lieErrorDeg", unit: "deg", min: -90, max: 90 }));
  const toTheLeft = oneOf(hand, ["left", "right"], "hand") === "right" ? error : 0 - error;
  return {
    aimLeftDeg: inDegrees(Math.atan(Math.tan(loft) * Math.sin(toTheLeft))),
    playedLoftDeg: inDegrees(Math.asin(Math.sin(loft) * Math.cos(error))),
    note: "face-normal-not-ball-start",
  };
}
