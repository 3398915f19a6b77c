import type { Millimetres } from "../quantity/units.ts";
import { type AssembledClub, summedClub } from "./assembledClub.ts";
import { checkedBuiltClub, checkedLengthChange, clubAtLength } from "./clubAtLength.ts";
import type { BuiltClub } from "./clubParts.ts";

/**
 * What a club weighs and how it swings when it is made longer or shorter at the butt.
 *
 *     head, shaft, ferrule: x + ΔL     new piece of shaft: m·ΔL/L_shaft at cap + ΔL/2     grip, tape, butt weight: as they are
 *
 * The piece weighs what the shaft does on average; the butt of a graphite shaft is about 12 % heavier, 0.03 points in
 * half an inch. Half an inch is 2.5 points on a driver and 3.4 on a 7-iron, not the 3 of the rule for both.
 *
 * @param club - its components in g and mm, shaft length and cap in mm
 * @param change - ΔL in mm, longer positive, 76.2 (3 in) either way
 * @returns total mass in g, balance point in mm, swing weight in points and in-oz, both inertias in kg·cm²
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/lengthChange.json
 */
export function lengthenedClub(club: BuiltClub, change: Millimetres): AssembledClub {
  const { head, others } = clubAtLength(checkedBuiltClub(club), checkedLengthChange(change));
  return summedClub([...others, head]);
}
