import type { Hand } from "../kinds.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";
import { type GripAtPlace, type GripWall, gripDiameter, type TapeLayers, unstretchedRubber } from "./gripDiameter.ts";
import { type GripPlace, gripHand } from "./gripHand.ts";

interface BuiltGrip {
  readonly hand: Hand;
  readonly diameterMm: Millimetres;
  /** Over the grip's nominal size there. */
  readonly overMm: Millimetres;
}

/**
 * What a grip measures under each hand, each place with its own tape.
 *
 *     D at 2 in and at 6 in below the cap, by `gripDiameter`; over = D − D₀
 *
 * The accuracy of `gripDiameter`: 0.005 in, and the final caliper reading wins. A grip that measures more under the
 * lower hand than under the upper may have a bulge or waist: look at it against the rules.
 *
 * @param places - grip, shaft and tape at either place, in mm; layers zero or more, a part of one where a wrap overlaps
 * @param player - the hand the player plays: it says which hand lies where
 * @param wall - the model, with the stretch factor for rubber
 * @returns hand, diameter and build-up in mm at either place
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @throws {DomainError} `quantity-unreadable` when the hand is neither left nor right
 * @see fixtures/published/gripBuildUp.json
 */
export function gripBuildUp(
  places: Readonly<Record<GripPlace, GripAtPlace & TapeLayers>>,
  player: Hand,
  wall: GripWall = unstretchedRubber,
): Readonly<Record<GripPlace, BuiltGrip>> {
  const builtAt = (place: GripPlace): BuiltGrip => {
    const diameterMm = gripDiameter(places[place], places[place], wall);
    return { hand: gripHand(player, place), diameterMm, overMm: millimetres(diameterMm - places[place].nominalMm) };
  };
  return { upper: builtAt("upper"), lower: builtAt("lower") };
}
