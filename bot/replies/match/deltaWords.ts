import type { CheckRow } from "../../../core/bag/checkRow.ts";
import type { ComparedQuantity } from "../../../core/bag/checkTolerances.ts";
import type { ClubComparison } from "../../../core/bag/compareClubs.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import { comparedWords } from "../calc/comparedWords.ts";
import { partWords } from "./partWords.ts";

type Row = CheckRow<ComparedQuantity>;
type LengthUnit = "in" | "mm";

/** Names short enough for a line of deltas. */
const shortNames: Readonly<Record<ComparedQuantity, string>> = {
  squaredLoftDeg: "loft",
  soledFaceDeg: "face",
  seatedLieDeg: "lie",
  bounceDeg: "bounce",
  lengthMm: "length",
  swingWeightPoints: "swing",
  totalMassG: "total",
  headMassG: "head mass",
  wraps: "wraps",
  balancePointMm: "balance",
  inertiaKgCm2: "inertia",
  frequencyCpm: "frequency",
  gripAt2InMm: "grip at 2 in",
  gripAt6InMm: "grip at 6 in",
  offsetMm: "offset",
};

const nameOf = (name: ClubComparison["unknown"][number]): string =>
  name in shortNames ? shortNames[name as ComparedQuantity] : partWords[name as keyof typeof partWords].name;

/** `loft off 0.4° weaker`, `face close`, `length same`. */
function rowWords({ quantity, verdict, delta }: Row, unit: LengthUnit): string {
  const { amount, more, less } = comparedWords[quantity];
  return `${shortNames[quantity]} ${verdict === "off" ? `off ${amount(Math.abs(delta), unit)} ${delta > 0 ? more : less}` : verdict}`;
}

const inTolerances = ({ delta, tolerance }: Row): number => Math.abs(delta) / (tolerance > 0 ? tolerance : 1);
const ofVerdict = (rows: readonly Row[], verdict: Row["verdict"], unit: LengthUnit): readonly string[] =>
  rows
    .filter((row) => row.verdict === verdict)
    .sort((one, other) => inTolerances(other) - inTolerances(one))
    .map((row) => rowWords(row, unit));

/** Parts that are not the gamer's: `shaft Dunlin 70 X (gamer Dunlin 60 X)`. */
const differingWords = (gamer: SpecClub, club: SpecClub, differing: ClubComparison["differing"], unit: LengthUnit): readonly string[] =>
  differing.map((part) => `${partWords[part].name} ${partWords[part].value(club, unit)} (gamer ${partWords[part].value(gamer, unit)})`);

/** Readings past their tolerance, furthest off first, then parts that differ. */
export const offWords = (gamer: SpecClub, club: SpecClub, { rows, differing }: ClubComparison, unit: LengthUnit): readonly string[] => [
  ...ofVerdict(rows, "off", unit),
  ...differingWords(gamer, club, differing, unit),
];

/** Every reading of both, the worst first. */
export const rowsWords = (rows: readonly Row[], unit: LengthUnit): readonly string[] =>
  (["off", "close", "same"] as const).flatMap((verdict) => ofVerdict(rows, verdict, unit));

/** Everything that was compared, the worst first, then what could not be. */
export function comparedWordsOf(gamer: SpecClub, club: SpecClub, comparison: ClubComparison, unit: LengthUnit): readonly string[] {
  const { rows, unknown, incomparable } = comparison;
  return [
    ...offWords(gamer, club, comparison, unit),
    ...ofVerdict(rows, "close", unit),
    ...ofVerdict(rows, "same", unit),
    ...unknown.map((name) => `${nameOf(name)} unknown`),
    ...incomparable.map((name) => `${nameOf(name)} measured differently`),
  ];
}
