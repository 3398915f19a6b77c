import type { Hand } from "../kinds.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { clockInHand, shorterTurn } from "./clock.ts";
import type { Sleeve } from "./sleeve.ts";
import { rowOfMark, sleeveSettings } from "./sleeveSettings.ts";

/** How far a shaft turns with its sleeve, the shorter way round. */
interface ShaftTurn {
  /** Clockwise seen from the butt positive, above −180 to 180. */
  readonly fromButtDeg: Degrees;
  /** The same turn on the clock of the head's hand, from the target over upright positive. */
  readonly onClockDeg: Degrees;
}

/**
 * How far shaft, graphics, rib and spine turn when a sleeve goes from one mark to another.
 *
 *     turn = c' − c,   on the clock of a left-handed head c − c'
 *
 * About the axis of the hosel; the ring of two pieces turns no shaft. Exact for the sleeve. The head, soled again, yaws
 * by up to τ/cos L and rolls the shaft by τ·tan L with it, 2.4° at 1.5° and lie 58, which nobody sees in a logo.
 *
 * @param fromMark - where the sleeve stands
 * @param toMark - where it goes
 * @param sleeve - tilt and marks c in degrees, of one piece or two
 * @param hand - of the head
 * @returns the turn in degrees, seen from the butt and on the clock of the hand
 * @throws {DomainError} `quantity-unreadable` when a mark is not printed or the hand is none, `quantity-out-of-range` when an angle is
 * impossible, `list-of-wrong-size` when nothing is printed
 * @see fixtures/published/sleeveHands.json
 */
export function turnOfShaft(fromMark: string, toMark: string, sleeve: Sleeve, hand: Hand): ShaftTurn {
  const settings = sleeveSettings(sleeve);
  const clockOf = (mark: string, field: string) => rowOfMark(settings, mark, field).shaftClockDeg;
  const clockwise = clockOf(toMark, "toMark") - clockOf(fromMark, "fromMark");
  return { fromButtDeg: shorterTurn(clockwise), onClockDeg: shorterTurn(clockInHand(degrees(clockwise), hand)) };
}
