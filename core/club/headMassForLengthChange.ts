import { oneOf } from "../quantity/oneOf.ts";
import { type Grams, grams, type Millimetres } from "../quantity/units.ts";
import { componentsOf } from "./builtClub.ts";
import { checkedBuiltClub, checkedLengthChange, clubAtLength } from "./clubAtLength.ts";
import type { BuiltClub } from "./clubParts.ts";
import { clubSum, type KeptQuantity, keptQuantities, massForClubSum } from "./clubSums.ts";

/**
 * The head mass that keeps a club's swing weight or inertia when its length changes at the butt.
 *
 *     swing weight: m = (S − Σ mᵢ·(xᵢ − 14 in)) / (x − 14 in)     inertia: m = (I − I_cg − Σ (mᵢ·(xᵢ² + dᵢ²) + Iᵢ)) / (x² + d²)
 *
 * Places after the change, by the model of `lengthenedClub`. The rule of 7 g for half an inch keeps the swing weight of an
 * iron to 0.3 points. Keeping the inertia takes 8.6 g longer and 8.9 g shorter on a 7-iron of point masses, 5.2 and 5.4 g on a driver.
 *
 * @param club - its components in g and mm, shaft length and cap in mm
 * @param change - ΔL in mm, longer positive, 76.2 (3 in) either way
 * @param kept - what stays as it is; `point-inertia` leaves out the parts' own
 * @returns g, of the head alone
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @throws {DomainError} `quantity-unreadable` when what to keep is unknown
 * @see fixtures/published/lengthChange.json
 */
export function headMassForLengthChange(club: BuiltClub, change: Millimetres, kept: KeptQuantity): Grams {
  const known = oneOf(kept, keptQuantities, "kept");
  const wanted = clubSum(known, componentsOf(checkedBuiltClub(club)));
  const { head, others } = clubAtLength(club, checkedLengthChange(change));
  return grams(massForClubSum(known, wanted, head, others));
}
