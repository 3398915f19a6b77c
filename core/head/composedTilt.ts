import { listOf } from "../quantity/listOf.ts";
import { onClock } from "./clock.ts";
import { inDegrees, radians } from "./radians.ts";
import { checkedTilt, NO_TILT, type SleeveTilt } from "./sleeveTilt.ts";
import { turnedAbout, type Vector } from "./vector.ts";

const MOST_PIECES = 4;
const STRAIGHT: Vector = [0, 0, 1];
/** Two opposite pieces cancel to rounding; what is left has no clock. */
const NO_TILT_SINE = 1e-12;

const leaned = (vector: Vector, { tiltDeg, clockDeg }: SleeveTilt): Vector =>
  turnedAbout([-Math.sin(radians(clockDeg)), Math.cos(radians(clockDeg)), 0], vector, radians(tiltDeg));

/**
 * One tilt that leans the shaft as several pieces do, one in the bore of the other: a ring and the sleeve in it.
 *
 *     s = R₁·R₂·…·z     tilt = atan2(√(s_x² + s_y²), s_z)     clock = atan2(s_y, s_x)
 *
 * Every R tilts by its piece's τ towards its clock, counted in the head and not in the piece outside it. Rotations, so
 * exact in either hand; adding the leans as plane vectors instead is within 0.001° up to 2° in all.
 *
 * @param pieces - tilt and clock of each in degrees, the piece in the hosel first
 * @returns tilt in degrees, clock in degrees from 0 to below 360; clock 0 when nothing leans
 * @throws {DomainError} `list-of-wrong-size` when there is no piece or more than four, `quantity-out-of-range` when an angle is impossible
 * @see fixtures/published/twoPieceSleeves.json
 */
export function composedTilt(pieces: readonly SleeveTilt[]): SleeveTilt {
  const checked = listOf(pieces, { field: "pieces", min: 1, max: MOST_PIECES }).map(checkedTilt);
  const [x, y, along] = checked.reduceRight(leaned, STRAIGHT);
  const sine = Math.hypot(x, y);
  if (sine < NO_TILT_SINE) {
    return NO_TILT;
  }
  return { tiltDeg: inDegrees(Math.atan2(sine, along)), clockDeg: onClock(inDegrees(Math.atan2(y, x))) };
}
