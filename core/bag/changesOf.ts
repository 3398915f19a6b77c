import type { ComparedQuantity } from "./checkTolerances.ts";
import type { ClubComparison } from "./compareClubs.ts";
import type { NamedQuantity } from "./partCosts.ts";

const clubChanges = ["head", "shaft", "length", "loft setting", "grip", "swing weight"] as const;

/** A thing a player would feel or see as another club. */
export type ClubChange = (typeof clubChanges)[number];

/** What each is told by: parts that differ, readings past their tolerance. */
const toldBy: Readonly<Record<ClubChange, readonly (ComparedQuantity | NamedQuantity)[]>> = {
  head: ["headModel", "grind"],
  shaft: ["shaftModel", "tipTrimMm"],
  length: ["lengthMm"],
  "loft setting": ["stampedLoftDeg", "sleeveModel", "sleeveMark", "squaredLoftDeg"],
  grip: ["gripModel", "rib", "wraps", "gripAt2InMm", "gripAt6InMm"],
  "swing weight": ["swingWeightPoints"],
};

/** How many things two clubs differ in, each named once: a comparison is worth most when one of them changes. */
export function changesOf({ rows, differing }: ClubComparison): readonly ClubChange[] {
  const off = new Set<string>([...differing, ...rows.filter(({ verdict }) => verdict === "off").map(({ quantity }) => quantity)]);
  return clubChanges.filter((change) => toldBy[change].some((name) => off.has(name)));
}
