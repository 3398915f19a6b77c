import { gramsPerPoint } from "../club/massAtPosition.ts";
import type { ClubName } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { FULCRUM_MM } from "../quantity/swingWeightScale.ts";
import { type Grams, grams, type Millimetres, type SwingWeightPoints, swingWeightPoints } from "../quantity/units.ts";
import { knownClub } from "./knownClub.ts";
import { DEFAULT_MASS_STEP_G, inSteps, spreadOf } from "./massSteps.ts";

interface WeighedClub {
  readonly club: ClubName;
  readonly swingWeightPoints: SwingWeightPoints;
  /** The head's centre of mass from the end of the grip cap. */
  readonly headFromCapMm: Millimetres;
}

interface SwingWeightMatchRow {
  readonly club: ClubName;
  /** What would meet the target to the last digit; negative is to be taken off. */
  readonly exactMassG: Grams;
  /** The same in whole steps of what can be added or taken. */
  readonly massG: Grams;
  readonly pointsAfter: SwingWeightPoints;
}

interface SwingWeightMatch {
  readonly rows: readonly SwingWeightMatchRow[];
  /** Highest less lowest of the set. */
  readonly spreadBeforePoints: SwingWeightPoints;
  readonly spreadAfterPoints: SwingWeightPoints;
}

const HEAD_NEAREST_MM = FULCRUM_MM + 50;

function checkedClub(club: WeighedClub): WeighedClub {
  inRange(club.swingWeightPoints, { field: "swingWeightPoints", unit: "points", min: -100, max: 100 });
  inRange(club.headFromCapMm, { field: "headFromCapMm", unit: "mm", min: HEAD_NEAREST_MM, max: 2000 });
  return knownClub(club);
}

/**
 * The mass to add to or take off each head of a set so that every club has one swing weight.
 *
 *     m = (p_target − p) · g a point at the head of this very club
 *
 * Exact for mass put at the head's centre; 10 mm short of it along the shaft costs 2 %. A reading is good to 0.3 points, so that 0.5 to
 * 0.7 g is as near as a scale can tell. An even swing weight is no even inertia: see `inertiaMatch`.
 *
 * @param set - swing weight in points (D0 = 0) and head position in mm of each club
 * @param target - in points, D0 = 0
 * @param massStep - smallest mass that can be added or taken, in g; 0 for none
 * @returns masses in g, swing weight after them and the spread of the set before and after, in points
 * @throws {DomainError} `quantity-out-of-range` when a number is impossible or a head is not past the fulcrum
 * @throws {DomainError} `quantity-unreadable` when no club is called so
 * @throws {DomainError} `list-of-wrong-size` when the set is empty or has more than 40 clubs
 * @see fixtures/published/setMatch.json
 */
export function swingWeightMatch(set: readonly WeighedClub[], target: SwingWeightPoints, massStep: Grams = DEFAULT_MASS_STEP_G): SwingWeightMatch {
  const clubs = listOf(set, { field: "set", min: 1, max: 40 }).map(checkedClub);
  const wanted = inRange(target, { field: "targetPoints", unit: "points", min: -100, max: 100 });
  const rows = clubs.map((club): SwingWeightMatchRow => {
    const perPointG = gramsPerPoint(club.headFromCapMm);
    const exactMassG = grams((wanted - club.swingWeightPoints) * perPointG);
    const massG = inSteps(exactMassG, massStep);
    return { club: club.club, exactMassG, massG, pointsAfter: swingWeightPoints(club.swingWeightPoints + massG / perPointG) };
  });
  return {
    rows,
    spreadBeforePoints: swingWeightPoints(spreadOf(clubs.map((club) => club.swingWeightPoints))),
    spreadAfterPoints: swingWeightPoints(spreadOf(rows.map((row) => row.pointsAfter))),
  };
}
