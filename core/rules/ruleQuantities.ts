import { mmFromInches } from "../quantity/units.ts";
import type { ClubFacts, Measurement, Measurements } from "./clubFacts.ts";

/** Quantities a rule names that are reckoned from what the gauges read. */
interface Reckoned {
  readonly shaftFromVerticalDeg: number | null;
  readonly headWidthLessDepthMm: number | null;
  readonly faceShareOfDepth: number | null;
  readonly faceShareOfWidth: number | null;
  readonly grooveSeparationLessThreeWidthsMm: number | null;
  readonly grooveAreaPerPitchMm: number | null;
  readonly markingEncroachmentMm: number | null;
}

export type RuleQuantity = Measurement | keyof Reckoned;
type Quantities = Reckoned & { readonly [K in Measurement]?: Measurements[K] | null };

/** Half the strip down the middle of a face that counts as the impact area: 1.68 in wide. */
const HALF_IMPACT_AREA_MM = mmFromInches(1.68) / 2;

function both(a: number | null | undefined, b: number | null | undefined, of: (a: number, b: number) => number): number | null {
  return a === null || a === undefined || b === null || b === undefined ? null : of(a, b);
}

/** Everything a rule may ask of a club, read or reckoned; null or absent where a reading is wanting. */
export function ruleQuantities(club: ClubFacts): Quantities {
  const { headHeelToToeMm: width, headFaceToBackMm: depth, faceHeelToToeMm: face, grooveWidthMm, grooveSeparationMm } = club;
  const pitchMm = both(grooveWidthMm, grooveSeparationMm, (w, s) => w + s);
  return {
    ...club,
    shaftFromVerticalDeg: both(90, club.seatedLieDeg, (upright, lie) => upright - lie),
    headWidthLessDepthMm: both(width, depth, (w, d) => w - d),
    faceShareOfDepth: both(face, depth, (f, d) => f / d),
    faceShareOfWidth: both(face, width, (f, w) => f / w),
    grooveSeparationLessThreeWidthsMm: both(grooveSeparationMm, grooveWidthMm, (s, w) => s - 3 * w),
    grooveAreaPerPitchMm: both(club.grooveAreaMm2, pitchMm, (a, p) => a / p),
    markingEncroachmentMm: both(HALF_IMPACT_AREA_MM, club.sideMarkingFromCentreMm, (half, from) => half - from),
  };
}
