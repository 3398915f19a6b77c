import { type ClubName, clubFamily } from "../kinds.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { combinedGaugeError } from "./combinedGaugeError.ts";
import { defaultGaugeErrors } from "./gaugeErrors.ts";
import { knownClub } from "./knownClub.ts";
import { neighbours } from "./neighbours.ts";

interface ClubOfLoft {
  readonly club: ClubName;
  /** Measured, not stamped; null or left out while nobody has measured it. */
  readonly squaredLoftDeg?: Degrees | null;
}

interface GapLimit {
  readonly minDeg: Degrees;
  readonly maxDeg: Degrees;
}

interface GapLimits {
  /** Between two wedges. */
  readonly wedges: GapLimit;
  readonly others: GapLimit;
}

/** Common practice, no source. Shop data: a setting may replace it. */
export const defaultGapLimits: GapLimits = {
  wedges: { minDeg: degrees(4), maxDeg: degrees(6) },
  others: { minDeg: degrees(3), maxDeg: degrees(5) },
};

interface LoftGap {
  readonly stronger: ClubName;
  readonly weaker: ClubName;
  readonly gapDeg: Degrees;
  readonly limits: GapLimit;
  /** Equal: two readings on one gauge cannot tell the lofts apart. */
  readonly flag: "equal" | "narrow" | "wide" | null;
}

interface LoftGaps {
  readonly gaps: readonly LoftGap[];
  /** Clubs nobody has measured: the gap beside them is not the gap it seems. */
  readonly missing: readonly ClubName[];
  /** Distance for a degree falls with loft: carry gaps are a check of their own. */
  readonly caveat: "loft-gaps-are-not-carry-gaps";
}

const SLACK_DEG = 1e-9;

const checkedLimit = (limit: GapLimit): void => {
  inRange(limit.minDeg, { field: "minDeg", unit: "deg", min: 0, max: 30 });
  inRange(limit.maxDeg, { field: "maxDeg", unit: "deg", min: limit.minDeg, max: 30 });
};

function checkedLoft(lofted: ClubOfLoft): { readonly club: ClubName; readonly loftDeg: number | null } {
  const { club, squaredLoftDeg = null } = knownClub(lofted);
  return { club, loftDeg: squaredLoftDeg === null ? null : inRange(squaredLoftDeg, { field: "squaredLoftDeg", unit: "deg", min: -15, max: 75 }) };
}

function flagOf(gapDeg: number, limit: GapLimit): LoftGap["flag"] {
  if (gapDeg <= combinedGaugeError(defaultGaugeErrors.squaredLoftDeg.error, 2)) {
    return "equal";
  }
  if (gapDeg < limit.minDeg - SLACK_DEG) {
    return "narrow";
  }
  return gapDeg > limit.maxDeg + SLACK_DEG ? "wide" : null;
}

/**
 * The steps of measured loft from club to club, strongest first, with those too narrow or too wide flagged.
 *
 *     gap = l of the next weaker club − l
 *
 * Exact for lofts of one gauge; a gap is good to ±0.18° when each loft is read to ±1/8°. The limits are common practice
 * with no source. The putter is left out.
 *
 * @param clubs - with measured squared lofts in degrees, in any order
 * @param limits - narrowest and widest good gap in degrees, between two wedges and between others
 * @returns gaps in degrees, clubs without a measured loft, and what a gap of loft does not say
 * @throws {DomainError} `quantity-out-of-range` when a loft or a limit is impossible
 * @throws {DomainError} `quantity-unreadable` when no club is called so
 * @throws {DomainError} `list-of-wrong-size` when there are more than 40 clubs
 * @see fixtures/published/setSteps.json
 */
export function loftGaps(clubs: readonly ClubOfLoft[], limits: GapLimits = defaultGapLimits): LoftGaps {
  [limits.wedges, limits.others].forEach(checkedLimit);
  const lofted = listOf(clubs, { field: "clubs", min: 0, max: 40 }).map(checkedLoft);
  const swung = lofted.filter(({ club }) => clubFamily(club) !== "putter");
  const measured = swung
    .flatMap(({ club, loftDeg }) => (loftDeg === null ? [] : [{ club, loftDeg }]))
    .sort((one, other) => one.loftDeg - other.loftDeg || (one.club < other.club ? -1 : 1));
  const gaps = neighbours(measured).map(([stronger, weaker]): LoftGap => {
    const betweenWedges = clubFamily(stronger.club) === "wedge" && clubFamily(weaker.club) === "wedge";
    const limit = betweenWedges ? limits.wedges : limits.others;
    const gapDeg = degrees(weaker.loftDeg - stronger.loftDeg);
    return { stronger: stronger.club, weaker: weaker.club, gapDeg, limits: limit, flag: flagOf(gapDeg, limit) };
  });
  const missing = swung.flatMap(({ club, loftDeg }) => (loftDeg === null ? [club] : [])).sort();
  return { gaps, missing, caveat: "loft-gaps-are-not-carry-gaps" };
}
