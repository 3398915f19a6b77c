import { inRange } from "../quantity/inRange.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { defaultSelectionTolerances, type SelectionTolerances } from "../selection/selectionTolerances.ts";
import type { Attitude } from "./attitude.ts";
import type { BareHead } from "./attitudeOf.ts";
import type { Sleeve } from "./sleeve.ts";
import { type SleeveChartRow, sleeveChart } from "./sleeveChart.ts";

const wishable = ["squaredLoftDeg", "soledFaceDeg", "seatedLieDeg"] as const;
type Wishable = (typeof wishable)[number];

/** What the club should read; what is left out does not matter. */
export type AttitudeWish = Partial<Pick<Attitude, Wishable>>;

/** A wished reading that a mark does not meet within its tolerance. */
interface AttitudeMiss {
  readonly reading: Wishable;
  readonly wantedDeg: Degrees;
  readonly gotDeg: Degrees;
  readonly toleranceDeg: Degrees;
}

/** A mark with what the head reads there and how far that is from the wish. */
interface RankedMark {
  readonly mark: string;
  readonly standard: boolean;
  readonly attitude: Attitude;
  /** Sum of squared deviations, each in units of its tolerance; lower is nearer. */
  readonly score: number;
  readonly misses: readonly AttitudeMiss[];
}

type MarkTolerances = Pick<SelectionTolerances, Wishable | "scoreBand">;

const wishLimits: Readonly<Record<Wishable, { readonly min: number; readonly max: number }>> = {
  squaredLoftDeg: { min: -15, max: 75 },
  soledFaceDeg: { min: -30, max: 30 },
  seatedLieDeg: { min: 35, max: 90 },
};

function checked(wish: AttitudeWish, tolerances: MarkTolerances): void {
  for (const reading of wishable) {
    const wanted = wish[reading];
    if (wanted !== undefined) {
      inRange(wanted, { field: reading, unit: "deg", ...wishLimits[reading] });
    }
    inRange(tolerances[reading], { field: `tolerance of ${reading}`, unit: "deg", min: 0.01, max: 20 });
  }
  inRange(tolerances.scoreBand, { field: "scoreBand", unit: "", min: 0.001, max: 100 });
}

function ranked({ mark, standard, attitude }: SleeveChartRow, wish: AttitudeWish, tolerances: MarkTolerances): RankedMark {
  const deviations = wishable.flatMap((reading) => {
    const wantedDeg = wish[reading];
    return wantedDeg === undefined ? [] : [{ reading, wantedDeg, gotDeg: attitude[reading], toleranceDeg: degrees(tolerances[reading]) }];
  });
  const off = ({ wantedDeg, gotDeg, toleranceDeg }: AttitudeMiss) => (gotDeg - wantedDeg) / toleranceDeg;
  const score = deviations.reduce((total, deviation) => total + off(deviation) ** 2, 0);
  return { mark, standard, attitude, score, misses: deviations.filter((deviation) => Math.abs(off(deviation)) > 1 + 1e-9) };
}

/**
 * The printed marks of one head's sleeve, nearest to a wish first.
 *
 *     score = Σ ( (got − wanted) / tolerance )²
 *
 * Within one band of scores the standard mark comes first (many players refuse a turned sleeve), then fewest readings
 * past their tolerance, then the lower score, then the order of the sleeve; the same rule by which heads are chosen.
 * Exact sleeve geometry, a real club within ±0.2°. With nothing wished the standard mark is first.
 *
 * @param head - measured bare, in degrees
 * @param sleeve - its tilt and marks in degrees
 * @param wish - squared loft and lie as seated, soled face (open positive), in degrees
 * @param tolerances - degrees that count as one unit of each, and the width of a band of equally good scores
 * @returns every mark, ranked, with the readings outside their tolerance
 * @throws {DomainError} `quantity-out-of-range` when an angle or a tolerance is impossible, `list-of-wrong-size` when nothing is printed
 * @throws {DomainError} `quantity-unreadable` when the hand is none, a mark is printed twice or the standard mark is not among them
 * @see fixtures/published/sleeveGeometry.json
 */
export function nearestMark(
  head: BareHead,
  sleeve: Sleeve,
  wish: AttitudeWish,
  tolerances: MarkTolerances = defaultSelectionTolerances,
): readonly RankedMark[] {
  checked(wish, tolerances);
  const band = ({ score }: RankedMark) => Math.floor(score / tolerances.scoreBand + 1e-9);
  return sleeveChart(head, sleeve)
    .map((row) => ranked(row, wish, tolerances))
    .sort(
      (one, other) =>
        band(one) - band(other) ||
        Number(other.standard) - Number(one.standard) ||
        one.misses.length - other.misses.length ||
        one.score - other.score,
    );
}
