import type { ClubName } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { type Degrees, degrees, type Millimetres, MM_PER_INCH, millimetres } from "../quantity/units.ts";
import { knownClub } from "./knownClub.ts";
import { neighbours } from "./neighbours.ts";

interface ClubOfSet {
  readonly club: ClubName;
  /** Null or left out while nobody has measured it. */
  readonly lengthMm?: Millimetres | null;
  readonly seatedLieDeg?: Degrees | null;
}

interface WantedStep {
  readonly lengthMm: Millimetres;
  readonly lieDeg: Degrees;
  /** How far a step may be from the wanted one. */
  readonly lengthToleranceMm: Millimetres;
  readonly lieToleranceDeg: Degrees;
}

/** Half an inch shorter and half a degree more upright from iron to iron: common practice, no source. A setting may replace it. */
export const defaultStep: WantedStep = {
  lengthMm: millimetres(MM_PER_INCH / 2),
  lieDeg: degrees(0.5),
  lengthToleranceMm: millimetres(MM_PER_INCH / 16),
  lieToleranceDeg: degrees(0.25),
};

type StepFlag = "small" | "large" | null;

interface SetStep {
  readonly longer: ClubName;
  readonly shorter: ClubName;
  /** Longer less shorter. */
  readonly lengthStepMm: Millimetres;
  readonly lengthFlag: StepFlag;
  /** Shorter less longer, more upright positive; null where a lie is not measured. */
  readonly lieStepDeg: Degrees | null;
  readonly lieFlag: StepFlag;
}

interface Progressions {
  readonly steps: readonly SetStep[];
  /** Clubs without a measured length: they stand in no row. */
  readonly missingLength: readonly ClubName[];
  readonly missingLie: readonly ClubName[];
}

const SLACK = 1e-9;

function checkedClub(measured: ClubOfSet): Required<ClubOfSet> {
  const { club, lengthMm = null, seatedLieDeg = null } = knownClub(measured);
  inRange(lengthMm ?? 1000, { field: "lengthMm", unit: "mm", min: 200, max: 2000 });
  inRange(seatedLieDeg ?? 60, { field: "seatedLieDeg", unit: "deg", min: 40, max: 85 });
  return { club, lengthMm, seatedLieDeg };
}

function checkedStep(step: WantedStep): void {
  inRange(step.lengthMm, { field: "step lengthMm", unit: "mm", min: 0, max: 200 });
  inRange(step.lieDeg, { field: "step lieDeg", unit: "deg", min: -10, max: 10 });
  inRange(step.lengthToleranceMm, { field: "lengthToleranceMm", unit: "mm", min: 0, max: 200 });
  inRange(step.lieToleranceDeg, { field: "lieToleranceDeg", unit: "deg", min: 0, max: 10 });
}

function flagOf(step: number, wanted: number, tolerance: number): StepFlag {
  if (Math.abs(step - wanted) <= tolerance + SLACK) {
    return null;
  }
  return step < wanted ? "small" : "large";
}

const namesWithout = (clubs: readonly Required<ClubOfSet>[], quantity: "lengthMm" | "seatedLieDeg"): readonly ClubName[] =>
  clubs.flatMap((club) => (club[quantity] === null ? [club.club] : [])).sort();

/**
 * The steps of length and lie from club to club of a set, longest first, with those off the wanted step flagged.
 *
 *     length step = L of the longer − L of the shorter     lie step = lie of the shorter − lie of the longer
 *
 * Exact differences of what was measured; two readings to 1/32 in and ±1/8° leave a step good to 1.1 mm and 0.18°. That a
 * set steps evenly is common practice with no source: woods and wedges of most sets do not.
 *
 * @param set - measured lengths in mm (60° plane to the end of the cap) and seated lies in degrees, in any order
 * @param wanted - the step of a good set and how far from it is still good, in mm and degrees
 * @returns steps in mm and degrees, and the clubs not measured
 * @throws {DomainError} `quantity-out-of-range` when a length, a lie or a step is impossible
 * @throws {DomainError} `quantity-unreadable` when no club is called so
 * @throws {DomainError} `list-of-wrong-size` when there are more than 40 clubs
 * @see fixtures/published/setSteps.json
 */
export function progressions(set: readonly ClubOfSet[], wanted: WantedStep = defaultStep): Progressions {
  checkedStep(wanted);
  const clubs = listOf(set, { field: "set", min: 0, max: 40 }).map(checkedClub);
  const byLength = clubs
    .flatMap(({ club, lengthMm, seatedLieDeg }) => (lengthMm === null ? [] : [{ club, lengthMm, seatedLieDeg }]))
    .sort((one, other) => other.lengthMm - one.lengthMm || (one.club < other.club ? -1 : 1));
  const steps = neighbours(byLength).map(([longer, shorter]): SetStep => {
    const lengthStepMm = millimetres(longer.lengthMm - shorter.lengthMm);
    const lieStepDeg = longer.seatedLieDeg === null || shorter.seatedLieDeg === null ? null : degrees(shorter.seatedLieDeg - longer.seatedLieDeg);
    return {
      longer: longer.club,
      shorter: shorter.club,
      lengthStepMm,
      lengthFlag: flagOf(lengthStepMm, wanted.lengthMm, wanted.lengthToleranceMm),
      lieStepDeg,
      lieFlag: lieStepDeg === null ? null : flagOf(lieStepDeg, wanted.lieDeg, wanted.lieToleranceDeg),
    };
  });
  return { steps, missingLength: namesWithout(clubs, "lengthMm"), missingLie: namesWithout(clubs, "seatedLieDeg") };
}
