import type { ClubFamily } from "../../core/kinds.ts";
import { MM_PER_INCH } from "../../core/quantity/units.ts";

export type RangedQuantity =
  | "stampedLoftDeg"
  | "squaredLoftDeg"
  | "seatedLieDeg"
  | "soledFaceDeg"
  | "bounceDeg"
  | "lengthMm"
  | "swingWeightPoints"
  | "totalMassG"
  | "headMassG"
  | "tipTrimMm"
  | "wraps";

/** What an order may ask of a club, both ends included, in mm, g, degrees and points; `typical` ranks guesses. */
export interface Range {
  readonly min: number;
  readonly max: number;
  readonly typical: number;
  /** In the words people read: `driver 6–14`. */
  readonly accepted: string;
}

const lofts: Readonly<Record<ClubFamily, readonly [number, number, number]>> = {
  driver: [6, 14, 9.5],
  fairway: [11, 27, 15],
  hybrid: [14, 32, 20],
  iron: [15, 50, 32],
  wedge: [40, 66, 56],
  putter: [-15, 10, 3],
};
const typicalLengthsIn: Readonly<Record<ClubFamily, number>> = { driver: 45, fairway: 43, hybrid: 40, iron: 37, wedge: 35.5, putter: 34 };
const anyClub: Readonly<Record<Exclude<RangedQuantity, "stampedLoftDeg" | "squaredLoftDeg" | "lengthMm">, Range>> = {
  seatedLieDeg: { min: 50, max: 80, typical: 60, accepted: "lie 50–80" },
  soledFaceDeg: { min: -6, max: 6, typical: 0, accepted: "face 6 closed to 6 open" },
  bounceDeg: { min: -2, max: 20, typical: 8, accepted: "bounce -2–20" },
  swingWeightPoints: { min: -30, max: 40, typical: 3, accepted: "swing A0–G10" },
  totalMassG: { min: 200, max: 700, typical: 320, accepted: "total 200–700 g" },
  headMassG: { min: 150, max: 450, typical: 200, accepted: "head weight 150–450 g" },
  tipTrimMm: { min: 0, max: 6 * MM_PER_INCH, typical: 12.7, accepted: "tip 0–6 in" },
  wraps: { min: 0, max: 9, typical: 1, accepted: "wraps 0–9" },
};

/** The range of a quantity for a family of clubs; without a family the widest. */
export function rangeOf(quantity: RangedQuantity, family: ClubFamily | null): Range {
  if (quantity === "stampedLoftDeg" || quantity === "squaredLoftDeg") {
    if (family === null) return { min: -15, max: 66, typical: 9.5, accepted: "loft -15–66" };
    const [min, max, typical] = lofts[family];
    return { min, max, typical, accepted: `${family} ${min}–${max}` };
  }
  if (quantity === "lengthMm") {
    const longestIn = family === "putter" || family === null ? 60 : 48;
    const typicalIn = family === null ? 45 : typicalLengthsIn[family];
    const accepted = `${family ?? "length"} 18–${longestIn} in`;
    return { min: 18 * MM_PER_INCH, max: longestIn * MM_PER_INCH, typical: typicalIn * MM_PER_INCH, accepted };
  }
  return anyClub[quantity];
}

const largestChange: Readonly<Record<RangedQuantity, number>> = {
  stampedLoftDeg: 5,
  squaredLoftDeg: 5,
  seatedLieDeg: 6,
  soledFaceDeg: 6,
  bounceDeg: 10,
  lengthMm: 4 * MM_PER_INCH,
  swingWeightPoints: 20,
  totalMassG: 100,
  headMassG: 30,
  tipTrimMm: 4 * MM_PER_INCH,
  wraps: 5,
};

/** How far a difference from the club named after `like` may go either way. */
export function changeRangeOf(quantity: RangedQuantity): Range {
  const most = largestChange[quantity];
  const lengthLike = quantity === "lengthMm" || quantity === "tipTrimMm";
  const shown = lengthLike ? `${most / MM_PER_INCH} in` : String(most);
  return { min: -most, max: most, typical: lengthLike ? 6.35 : 0.5, accepted: `a change of up to ${shown}` };
}
