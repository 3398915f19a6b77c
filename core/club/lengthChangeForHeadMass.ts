import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type Grams, type Millimetres, millimetres } from "../quantity/units.ts";
import { componentsOf } from "./builtClub.ts";
import { checkedBuiltClub, clubAtLength, LONGEST_CHANGE_MM } from "./clubAtLength.ts";
import type { BuiltClub } from "./clubParts.ts";
import { clubSum, type KeptQuantity, keptQuantities } from "./clubSums.ts";
import { headMassForLengthChange } from "./headMassForLengthChange.ts";

type LengthChange =
  | { readonly kind: "found"; readonly lengthChangeMm: Millimetres }
  /** No length within 3 in does: the masses that 3 in longer and 3 in shorter would take. */
  | { readonly kind: "refused"; readonly code: "no-length-in-reach"; readonly lightestHeadG: Grams; readonly heaviestHeadG: Grams };

/** Halvings from 6 in down to below a millionth of a millimetre. */
const HALVINGS = 50;

/** Where a rising function passes 0, by halving the interval. */
function risingRoot(of: (x: number) => number, low: number, high: number, halvings: number): number {
  const middle = (low + high) / 2;
  if (halvings === 0) {
    return middle;
  }
  return of(middle) < 0 ? risingRoot(of, middle, high, halvings - 1) : risingRoot(of, low, middle, halvings - 1);
}

/**
 * The change of length at the butt that keeps a club's swing weight or inertia when its head is another mass.
 *
 *     Σ over the parts at ΔL with the new head = Σ over the parts as they are
 *
 * By the model of `lengthenedClub`; the sum rises with ΔL for every club, so halving finds the one root to 1e-6 mm. The new
 * head's centre and own inertia are taken as the old one's.
 *
 * @param club - its components in g and mm, shaft length and cap in mm
 * @param headMass - of the new head in g, 1 to 2000
 * @param kept - what stays as it is; `point-inertia` leaves out the parts' own
 * @returns ΔL in mm, longer positive; or, when none within 3 in does, the head masses that could be kept up with
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @throws {DomainError} `quantity-unreadable` when what to keep is unknown
 * @see fixtures/published/lengthChange.json
 */
export function lengthChangeForHeadMass(club: BuiltClub, headMass: Grams, kept: KeptQuantity): LengthChange {
  const known = oneOf(kept, keptQuantities, "kept");
  const wanted = clubSum(known, componentsOf(checkedBuiltClub(club)));
  inRange(headMass, { field: "headMassG", unit: "g", min: 1, max: 2000 });
  const changed = { ...club, head: { ...club.head, massG: headMass } };
  const above = (changeMm: number) => {
    const { head, others } = clubAtLength(changed, changeMm);
    return clubSum(known, [...others, head]) - wanted;
  };
  if (above(-LONGEST_CHANGE_MM) > 0 || above(LONGEST_CHANGE_MM) < 0) {
    const headAt = (changeMm: number) => headMassForLengthChange(club, millimetres(changeMm), known);
    return { kind: "refused", code: "no-length-in-reach", lightestHeadG: headAt(LONGEST_CHANGE_MM), heaviestHeadG: headAt(-LONGEST_CHANGE_MM) };
  }
  return { kind: "found", lengthChangeMm: millimetres(risingRoot(above, -LONGEST_CHANGE_MM, LONGEST_CHANGE_MM, HALVINGS)) };
}
