import { inRange } from "../quantity/inRange.ts";
import { grams, kilogramSquareCentimetres, type Millimetres, millimetres } from "../quantity/units.ts";
import { componentsOf } from "./builtClub.ts";
import { checkedComponents } from "./checkedComponents.ts";
import type { ClubComponent } from "./clubComponent.ts";
import type { BuiltClub } from "./clubParts.ts";
import { GRAM_SQUARE_MM_PER_KG_SQUARE_CM } from "./clubSums.ts";

/** A length changes by 3 in at most: past that it is another club. */
export const LONGEST_CHANGE_MM = 76.2;
/** A head this far out stays past the fulcrum of the scale when the club is cut by all of that. */
const NEAREST_HEAD_MM = 450;

/** A club whose length or head is to change, every value of it possible. */
export function checkedBuiltClub<C extends ClubComponent>(club: BuiltClub<C>): BuiltClub<C> {
  checkedComponents(componentsOf(club));
  inRange(club.head.fromCapMm, { field: "head fromCapMm", unit: "mm", min: NEAREST_HEAD_MM, max: 2000 });
  inRange(club.shaftLengthMm, { field: "shaftLengthMm", unit: "mm", min: 300, max: 1500 });
  inRange(club.capMm, { field: "capMm", unit: "mm", min: 0, max: 50 });
  return club;
}

export const checkedLengthChange = (change: Millimetres): number =>
  inRange(change, { field: "lengthChangeMm", unit: "mm", min: -LONGEST_CHANGE_MM, max: LONGEST_CHANGE_MM });

/** The head of the club and all its other parts after a change of length at the butt; the piece cut off has a mass below 0. */
export function clubAtLength(club: BuiltClub, changeMm: number): { readonly head: ClubComponent; readonly others: readonly ClubComponent[] } {
  const movedOut = <C extends ClubComponent>(part: C): C => ({ ...part, fromCapMm: millimetres(part.fromCapMm + changeMm) });
  const pieceG = (club.shaft.massG / club.shaftLengthMm) * changeMm;
  const piece: ClubComponent = {
    name: "piece of shaft",
    massG: grams(pieceG),
    fromCapMm: millimetres(club.capMm + changeMm / 2),
    ownInertiaKgCm2: kilogramSquareCentimetres((pieceG * changeMm ** 2) / 12 / GRAM_SQUARE_MM_PER_KG_SQUARE_CM),
  };
  return { head: movedOut(club.head), others: [...[club.shaft, ...club.headEnd].map(movedOut), piece, club.grip, ...club.buttEnd] };
}
