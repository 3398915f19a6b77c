import { GRAM_SQUARE_MM_PER_KG_SQUARE_CM } from "../club/clubSums.ts";
import type { ClubName } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { type Grams, grams, type KilogramSquareCentimetres, kilogramSquareCentimetres, type Millimetres } from "../quantity/units.ts";
import { knownClub } from "./knownClub.ts";
import { DEFAULT_MASS_STEP_G, inSteps, spreadOf } from "./massSteps.ts";

interface SwungClub {
  readonly club: ClubName;
  /** About the end of the grip cap. */
  readonly inertiaKgCm2: KilogramSquareCentimetres;
  /** The head's centre of mass from the end of the grip cap. */
  readonly headFromCapMm: Millimetres;
}

interface InertiaMatchRow {
  readonly club: ClubName;
  /** What would meet the target to the last digit; negative is to be taken off. */
  readonly exactMassG: Grams;
  /** The same in whole steps of what can be added or taken. */
  readonly massG: Grams;
  readonly inertiaAfterKgCm2: KilogramSquareCentimetres;
}

interface InertiaMatch {
  readonly rows: readonly InertiaMatchRow[];
  /** Highest less lowest of the set. */
  readonly spreadBeforeKgCm2: KilogramSquareCentimetres;
  readonly spreadAfterKgCm2: KilogramSquareCentimetres;
}

function checkedClub(club: SwungClub): SwungClub {
  inRange(club.inertiaKgCm2, { field: "inertiaKgCm2", unit: "kg·cm²", min: 100, max: 20_000 });
  inRange(club.headFromCapMm, { field: "headFromCapMm", unit: "mm", min: 100, max: 2000 });
  return knownClub(club);
}

/**
 * The mass to add to or take off each head of a set so that every club has one inertia about its butt.
 *
 *     m = (I_target − I) / x²
 *
 * Exact for a mass at the head's centre, x from the end of the cap; its own size and its distance from the shaft are left
 * out: 0.2 % for 40 mm beside the axis. All inertias by one method: sums without the parts' own inertia are
 * 2.5 to 3.1 % low, and benches agree to 1.5 % only.
 *
 * @param set - inertia in kg·cm² and head position in mm of each club
 * @param target - in kg·cm²
 * @param massStep - smallest mass that can be added or taken, in g; 0 for none
 * @returns masses in g, inertia after them and the spread of the set before and after, in kg·cm²
 * @throws {DomainError} `quantity-out-of-range` when a number is impossible
 * @throws {DomainError} `quantity-unreadable` when no club is called so
 * @throws {DomainError} `list-of-wrong-size` when the set is empty or has more than 40 clubs
 * @see fixtures/published/setMatch.json
 */
export function inertiaMatch(set: readonly SwungClub[], target: KilogramSquareCentimetres, massStep: Grams = DEFAULT_MASS_STEP_G): InertiaMatch {
  const clubs = listOf(set, { field: "set", min: 1, max: 40 }).map(checkedClub);
  const wanted = inRange(target, { field: "targetKgCm2", unit: "kg·cm²", min: 100, max: 20_000 });
  const rows = clubs.map((club): InertiaMatchRow => {
    const perGram = club.headFromCapMm ** 2 / GRAM_SQUARE_MM_PER_KG_SQUARE_CM;
    const exactMassG = grams((wanted - club.inertiaKgCm2) / perGram);
    const massG = inSteps(exactMassG, massStep);
    const inertiaAfterKgCm2 = kilogramSquareCentimetres(club.inertiaKgCm2 + massG * perGram);
    return { club: club.club, exactMassG, massG, inertiaAfterKgCm2 };
  });
  return {
    rows,
    spreadBeforeKgCm2: kilogramSquareCentimetres(spreadOf(clubs.map((club) => club.inertiaKgCm2))),
    spreadAfterKgCm2: kilogramSquareCentimetres(spreadOf(rows.map((row) => row.inertiaAfterKgCm2))),
  };
}
