import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { inDegrees, radians } from "./radians.ts";

/** What the number on a sleeve means: the squared loft it takes off, or the tilt of its bore. Makers differ. */
export type RatingKind = "squared-loft" | "tilt";

/** The driver that a rated loft change is meant for: a rating belongs to a sleeve, not to a head. */
export const RATED_HEAD_LOFT_DEG = degrees(9);

const HIGHEST_RATING_DEG = 4;

/**
 * The tilt of a sleeve's bore from the number it is rated with.
 *
 *     squared-loft: sin l·cos τ − cos l/sin L · sin τ = sin(l − r)     tilt: τ = r
 *
 * Solved in closed form for τ, squared at the design lie L, from the untilted head of squared loft l and face 0 to the
 * lowest mark. Exact; the small-angle rule τ = r·sin L reads 0.0003° low at r = 1 and 0.0012° at r = 2 (l = 9, L = 58).
 * From a standard mark at the side a quarter turn to the lowest gives 9 % less squared at the design lie, since the lean
 * to the side moves that loft too; at the seated lie it gives r to within 0.01°.
 *
 * @param ratingDeg - r in degrees
 * @param kind - what r means
 * @param designLieDeg - L in degrees
 * @param squaredLoftDeg - l in degrees, before anything tilts
 * @returns τ in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `quantity-unreadable` when the kind is none
 * @see fixtures/published/sleeveRatings.json
 */
export function tiltFromRating(ratingDeg: Degrees, kind: RatingKind, designLieDeg: Degrees, squaredLoftDeg: Degrees = RATED_HEAD_LOFT_DEG): Degrees {
  const rating = radians(inRange(ratingDeg, { field: "ratingDeg", unit: "deg", min: 0, max: HIGHEST_RATING_DEG }));
  const lie = radians(angleInRange(designLieDeg, "lie", "designLieDeg"));
  const loft = radians(angleInRange(squaredLoftDeg, "loft", "squaredLoftDeg"));
  if (oneOf(kind, ["squared-loft", "tilt"], "kind") === "tilt") {
    return ratingDeg;
  }
  const alongTheAxis = Math.sin(loft);
  const across = Math.cos(loft) / Math.sin(lie);
  const phase = Math.atan2(across, alongTheAxis);
  const tilt = Math.acos(Math.sin(loft - rating) / Math.hypot(alongTheAxis, across)) - phase;
  return inDegrees(Math.max(0, tilt));
}
