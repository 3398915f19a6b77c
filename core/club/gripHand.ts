import type { Hand } from "../kinds.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Millimetres, mmFromInches } from "../quantity/units.ts";

/** Upper is nearer the cap. */
export type GripPlace = "upper" | "lower";

/** Where a grip is measured under each hand, from the end of the cap: 2 and 6 in. Common practice. */
export const gripMeasuredAt: Readonly<Record<GripPlace, Millimetres>> = { upper: mmFromInches(2), lower: mmFromInches(6) };

/**
 * The hand at a place of the grip: a left-hander's lower hand is the left.
 *
 * Definition, exact; a player who holds cross-handed is written as one of the other hand.
 *
 * @param player - the hand the player plays
 * @param place - nearer the cap, or farther down
 * @returns the hand that lies there
 * @throws {DomainError} `quantity-unreadable` for another word
 * @see fixtures/published/gripSizes.json
 */
export function gripHand(player: Hand, place: GripPlace): Hand {
  const lower = oneOf(player, ["left", "right"], "player");
  if (oneOf(place, ["upper", "lower"], "place") === "lower") {
    return lower;
  }
  return lower === "left" ? "right" : "left";
}
