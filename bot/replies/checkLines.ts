import type { FinalCheck } from "../../core/buildSheet/finalCheck.ts";
import type { LookName } from "../../core/buildSheet/lookRows.ts";
import type { Line } from "../chat/types.ts";
import type { ClubFacts } from "../operations/orderFacts.ts";
import { line } from "./card.ts";
import { readingText } from "./readingText.ts";
import { shown } from "./shown.ts";

const checkWords: Readonly<Record<string, string>> = {
  squaredLoftDeg: "loft",
  soledFaceDeg: "face",
  seatedLieDeg: "lie",
  bounceDeg: "bounce",
  lengthMm: "length",
  swingWeightPoints: "swing",
  totalMassG: "total",
  headMassG: "head",
  wraps: "wraps",
  gripAt2InMm: "grip at 2 in",
  gripAt6InMm: "grip at 6 in",
  sleeve: "sleeve",
};

export const checkWord = (quantity: string): string => checkWords[quantity] ?? quantity;
const lookWords: Readonly<Record<LookName, string>> = {
  logo: "logo",
  rib: "rib",
  grip: "grip",
  shaft: "shaft",
  sleeve: "sleeve mark",
  stamp: "stamp",
  head: "head",
};

function offBy(quantity: string, delta: number): string {
  const by = shown.angle(Math.abs(delta));
  return quantity.endsWith("Mm") ? `off ${by} mm` : `off ${by}`;
}

/** What was wanted > what was got, and `same`, `close` or `off` by how much. */
export function checkLines(check: FinalCheck): readonly Line[] {
  const rows = check.rows.map((row) =>
    line(`${checkWord(row.quantity)} ${readingText(row.quantity, row.wanted)} > ${readingText(row.quantity, row.got)} `, {
      strong: row.verdict === "off" ? offBy(row.quantity, row.delta) : row.verdict,
    }),
  );
  const looks = check.looks.map((row) =>
    row.verdict === "same"
      ? line(`${lookWords[row.look]} ${row.seen} `, { strong: "same" })
      : line(`${lookWords[row.look]} ${row.wanted} > ${row.seen} `, { strong: "off" }),
  );
  const unmeasured = check.unmeasured.map((name) => (name in lookWords ? `look at the ${lookWords[name as LookName]}` : checkWord(name)));
  return [...rows, ...looks, ...(unmeasured.length === 0 ? [] : [line(`Still to measure: ${unmeasured.join(", ")}`)])];
}

/** `7i 34.5 > 35.0, 62.5 > 62.0`: as found and as left, where both were read. */
export function foundLines({ found, measured }: ClubFacts): readonly Line[] {
  const pairs = found.flatMap(({ quantity, value }) => {
    const left = measured.find((row) => row.quantity === quantity);
    return left === undefined || left.value === value
      ? []
      : [`${checkWord(quantity)} ${readingText(quantity, value)} > ${readingText(quantity, left.value)}`];
  });
  return pairs.length === 0 ? [] : [line(`As found > as left: ${pairs.join(", ")}`)];
}
