import type { Hand } from "../kinds.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Degrees, degrees } from "../quantity/units.ts";

const FULL_TURN_DEG = 360;

/** A place on the clock, from 0 to below 360. */
export const onClock = (deg: number): Degrees => degrees(((deg % FULL_TURN_DEG) + FULL_TURN_DEG) % FULL_TURN_DEG);

/** The shorter way round for a turn, above -180 to 180. */
export const shorterTurn = (deg: number): Degrees => {
  const turn = onClock(deg);
  return turn > FULL_TURN_DEG / 2 ? degrees(turn - FULL_TURN_DEG) : turn;
};

/**
 * The clock of a head of one hand, from the clock as it goes clockwise seen from the butt: 0 to the target, 90 upright.
 * That is the clock as printed in a right-handed head; a left-handed head is its mirror image.
 */
export const clockInHand = (clockwiseDeg: number, hand: Hand): number =>
  oneOf(hand, ["left", "right"], "hand") === "right" ? clockwiseDeg : -clockwiseDeg;
