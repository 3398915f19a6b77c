import type { Hand } from "../kinds.ts";
import type { Degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { clockInHand } from "./clock.ts";
import { radians } from "./radians.ts";
import { checkedTilt, type SleeveTilt } from "./sleeveTilt.ts";
import type { Vector } from "./vector.ts";

/**
 * Where the shaft of a soled head points, from the head to the grip, as a unit vector.
 *
 *     s = cos τ·(0, cos L, sin L) + sin τ·( cos φ·(1, 0, 0) + sin φ·(0, −sin L, cos L) )
 *
 * φ is the clock c as printed in a right-handed head and −c in a left-handed one. Exact for a straight bore; the seating
 * of a sleeve and the run-out of a bonded shaft add ±0.2°.
 *
 * @param designLieDeg - L in degrees
 * @param tilt - τ and c in degrees
 * @param hand - of the head
 * @returns x to the target, y to the player, z up
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `quantity-unreadable` when the hand is none
 * @see fixtures/published/sleeveHands.json
 */
export function shaftDirection(designLieDeg: Degrees, tilt: SleeveTilt, hand: Hand): Vector {
  const lie = radians(angleInRange(designLieDeg, "lie", "designLieDeg"));
  const lean = radians(checkedTilt(tilt).tiltDeg);
  const clock = radians(clockInHand(tilt.clockDeg, hand));
  const upright = Math.sin(lean) * Math.sin(clock);
  return [
    Math.sin(lean) * Math.cos(clock),
    Math.cos(lean) * Math.cos(lie) - upright * Math.sin(lie),
    Math.cos(lean) * Math.sin(lie) + upright * Math.cos(lie),
  ];
}
