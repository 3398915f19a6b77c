import { type ClubFamily, type ClubName, clubFamily } from "../../core/kinds.ts";
import { MM_PER_INCH } from "../../core/quantity/units.ts";
import { directionOf } from "./amountAt.ts";
import { leanOrder } from "./leanOrder.ts";
import { type NumberHit, numberAt } from "./numberAt.ts";
import { rangeOf } from "./quantityRanges.ts";
import { quantityOfWord } from "./vocabulary.ts";
import type { Word } from "./wordsOf.ts";

/** `7i 34.5 62`: the first number behind a club is its loft and the next its lie, or a wood's face; their names are put in. */
export function namedPositions(words: readonly Word[], club: ClubName | null): readonly Word[] {
  const family = club === null ? null : clubFamily(club);
  const loft = family === null ? null : bareAt(words, 0, family);
  if (family === null || loft === null || (!isIn(loft, "squaredLoftDeg", family) && isLength(loft, family))) return words;
  const named = [nameBefore(words, 0, "loft"), ...words.slice(0, loft.next)];
  const second = bareAt(words, loft.next, family);
  const name = second === null ? null : secondName(second, family);
  return name === null ? [...named, ...words.slice(loft.next)] : [...named, nameBefore(words, loft.next, name), ...words.slice(loft.next)];
}

/** A number with no word that says what it is of. */
function bareAt(words: readonly Word[], at: number, family: ClubFamily): NumberHit | null {
  const hit = /^[\d.+-]/.test(words[at]?.text ?? "") ? numberAt(words, at) : null;
  if (hit === null || (hit.unit !== null && hit.unit !== "deg") || (hit.signed && isIron(family))) return null;
  const behind = words[hit.next];
  const text = behind === undefined || (behind.gap !== "space" && behind.gap !== "tight") ? "" : behind.text;
  const isDirected = leanOrder.some((quantity) => directionOf(quantity, text) !== 0);
  const isNamed = /^(true|squared|cpm)$/.test(text) || (quantityOfWord(text) !== null && numberAt(words, hit.next + 1) === null);
  return isDirected || isNamed ? null : hit;
}

const isIron = (family: ClubFamily): boolean => family === "iron" || family === "wedge" || family === "hybrid";

/** `driver 45.25`: too much for a loft, and right for a length. */
function isLength({ value }: NumberHit, family: ClubFamily): boolean {
  const { min, max } = rangeOf("lengthMm", family);
  return [value, value * MM_PER_INCH].some((lengthMm) => lengthMm >= min && lengthMm <= max);
}

function secondName(hit: NumberHit, family: ClubFamily): "lie" | "face" | null {
  if (isIn(hit, "seatedLieDeg", family)) return "lie";
  return (family === "driver" || family === "fairway") && isIn(hit, "soledFaceDeg", family) ? "face" : null;
}

function isIn({ value }: NumberHit, quantity: "squaredLoftDeg" | "seatedLieDeg" | "soledFaceDeg", family: ClubFamily): boolean {
  const { min, max } = rangeOf(quantity, family);
  return value >= min && value <= max;
}

/** A word that was not typed: it has a place and no width. */
function nameBefore(words: readonly Word[], at: number, text: string): Word {
  const from = words[at]?.from ?? 0;
  return { text, from, to: from, gap: words[at]?.gap ?? "space", decimalComma: false };
}
