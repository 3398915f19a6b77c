import { numberAt } from "../numberAt.ts";
import type { Word } from "../wordsOf.ts";
import type { AskedQuantity, Bound } from "./findQuestion.ts";

const quantityWords: ReadonlyMap<string, AskedQuantity> = new Map([
  ["true", "squaredLoftDeg"],
  ["loft", "squaredLoftDeg"],
  ["lofts", "squaredLoftDeg"],
  ["squared", "squaredLoftDeg"],
  ["lie", "seatedLieDeg"],
  ["face", "soledFaceDeg"],
  ["open", "soledFaceDeg"],
  ["closed", "soledFaceDeg"],
  ["bounce", "bounceDeg"],
  ["mass", "massG"],
  ["weight", "massG"],
  ["g", "massG"],
  ["gram", "massG"],
  ["grams", "massG"],
]);
/** Comparing words: `1` for more, `-1` for less; with the ends or without. */
const comparing: ReadonlyMap<string, readonly [1 | -1, boolean]> = new Map([
  ["under", [-1, false]],
  ["below", [-1, false]],
  ["less than", [-1, false]],
  ["lighter than", [-1, false]],
  ["stronger than", [-1, false]],
  ["at most", [-1, true]],
  ["up to", [-1, true]],
  ["over", [1, false]],
  ["above", [1, false]],
  ["more than", [1, false]],
  ["heavier than", [1, false]],
  ["weaker than", [1, false]],
  ["at least", [1, true]],
  ["from", [1, true]],
] as const);
/** No loft, lie or bounce is as large, no head as light. */
const LEAST_MASS_G = 100;
const hyphened = /^(\d{1,3}(?:\.\d{1,3})?)-(\d{1,3}(?:\.\d{1,3})?)$/;

interface BoundHit {
  readonly bound: Bound;
  readonly next: number;
}

interface Numbers {
  readonly from: number;
  readonly to: number | null;
  readonly unit: string | null;
  readonly next: number;
}

const joiners = new Set(["to", "and", "-"]);

/** One number, or two with `to` or a hyphen between them. */
function numbersAt(words: readonly Word[], at: number): Numbers | null {
  const ends = hyphened.exec(words[at]?.text ?? "");
  if (ends !== null) return { from: Number(ends[1]), to: Number(ends[2]), unit: null, next: at + 1 };
  const first = numberAt(words, at);
  if (first === null) return null;
  const second = joiners.has(words[first.next]?.text ?? "") ? numberAt(words, first.next + 1) : null;
  return { from: first.value, to: second?.value ?? null, unit: (second ?? first).unit, next: (second ?? first).next };
}

/** Reads a bound with its quantity before or behind it: `under 9 true`, `lie over 57`, `8.5 to 9`, `mass 197`. */
export function boundAt(words: readonly Word[], at: number): BoundHit | null {
  const named = quantityWords.get(words[at]?.text ?? "");
  const start = named === undefined ? at : at + 1;
  const width = [2, 1].find((count) => comparing.has(wordsAt(words, start, count)));
  const compared = width === undefined ? undefined : comparing.get(wordsAt(words, start, width));
  const between = words[start]?.text === "between";
  const numbers = numbersAt(words, start + (width ?? 0) + (between ? 1 : 0));
  if (numbers === null) return null;
  const behind = named === undefined ? quantityBehind(words, numbers) : { quantity: named, next: skipSide(words, numbers.next, named) };
  const isSure = named !== undefined || behind.quantity !== null || compared !== undefined || numbers.to !== null;
  if (!isSure) return null;
  const quantity = behind.quantity ?? (numbers.from >= LEAST_MASS_G ? "massG" : "squaredLoftDeg");
  const isClosed = quantity === "soledFaceDeg" && words.slice(at, behind.next).some(({ text }) => text === "closed");
  return { bound: boundOf(quantity, numbers, compared, isClosed ? -1 : 1), next: behind.next };
}

const wordsAt = (words: readonly Word[], at: number, count: number): string =>
  words
    .slice(at, at + count)
    .map(({ text }) => text)
    .join(" ");

function quantityBehind(words: readonly Word[], { unit, next }: Numbers): { readonly quantity: AskedQuantity | null; readonly next: number } {
  if (unit === "g") return { quantity: "massG", next };
  const quantity = quantityWords.get(words[next]?.text ?? "") ?? null;
  const isOwn = quantity !== null && !comparing.has(words[next + 1]?.text ?? "") && numberAt(words, next + 1) === null;
  return isOwn ? { quantity, next: skipSide(words, next + 1, quantity) } : { quantity: null, next };
}

/** `9 true loft`, `0.5 open face`, `face 0.5 open`. */
function skipSide(words: readonly Word[], at: number, quantity: AskedQuantity): number {
  return quantityWords.get(words[at]?.text ?? "") === quantity && numberAt(words, at + 1) === null ? at + 1 : at;
}

function boundOf(quantity: AskedQuantity, { from, to }: Numbers, compared: readonly [1 | -1, boolean] | undefined, factor: 1 | -1): Bound {
  if (to !== null) {
    const ends = [from * factor, to * factor];
    return { quantity, kind: "range", min: Math.min(...ends), max: Math.max(...ends), includesEnds: true };
  }
  if (compared === undefined) return { quantity, kind: "near", value: from * factor };
  const [direction, includesEnds] = compared;
  const isUp = direction * factor > 0;
  return { quantity, kind: "range", min: isUp ? from * factor : null, max: isUp ? null : from * factor, includesEnds };
}
