import { MM_PER_INCH } from "../../core/quantity/units.ts";
import { ask, gauged, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { type NumberHit, numberAt } from "./numberAt.ts";
import { own } from "./own.ts";
import type { GaugedQuantity } from "./reading.ts";
import { skipAll } from "./skipAll.ts";
import { noteComma } from "./takeAmount.ts";

type GaugeOnly = Extract<GaugedQuantity, "frequencyCpm" | "balancePointMm" | "gripAt2InMm" | "gripAt6InMm">;

const quantities: Readonly<Record<string, GaugeOnly>> = {
  freq: "frequencyCpm",
  frequency: "frequencyCpm",
  cpm: "frequencyCpm",
  balance: "balancePointMm",
  bal: "balancePointMm",
  at2: "gripAt2InMm",
  at6: "gripAt6InMm",
};
/** Both ends included, in the quantity's own unit; lengths below `inchesBelow` without a unit are inches. */
const ranges: Readonly<Record<GaugeOnly, { readonly min: number; readonly max: number; readonly inchesBelow: number; readonly accepted: string }>> = {
  frequencyCpm: { min: 100, max: 500, inchesBelow: 0, accepted: "frequency 100–500 cpm" },
  balancePointMm: { min: 250, max: 1200, inchesBelow: 100, accepted: "balance 250–1200 mm" },
  gripAt2InMm: { min: 12, max: 45, inchesBelow: 5, accepted: "grip 0.5–1.75 in" },
  gripAt6InMm: { min: 12, max: 45, inchesBelow: 5, accepted: "grip 0.5–1.75 in" },
};
const between = ["is", "point", "size", "sizes", "and", "in", "inch", "of"];

/** What only a gauge says: `freq 265`, `balance 780`, `grip .900 .820`, `at2 0.9 at6 0.82`, `size 22.9 20.8 mm`. */
export function readGauged(pad: Notepad, at: number): number {
  if (pad.mode !== "measured") return at;
  const word = wordAt(pad, at);
  if (word === "grip" || word === "size") return readGripSize(pad, at);
  const led = numberAt(pad.words, at);
  if (led !== null && led.unit === null && wordAt(pad, led.next) === "cpm") return note(pad, "frequencyCpm", at, led, led.next + 1);
  const isSpaced = word === "at" && /^[26]$/.test(wordAt(pad, at + 1));
  const quantity = own(quantities, isSpaced ? `at${wordAt(pad, at + 1)}` : word);
  if (quantity === null) return at;
  const start = skipAll(pad, isSpaced ? at + 2 : at + 1, between);
  const hit = numberAt(pad.words, start);
  return hit === null ? at : note(pad, quantity, start, hit, hit.next);
}

/** `grip .900 .820`: 2 and 6 in below the cap, in that order. */
function readGripSize(pad: Notepad, at: number): number {
  const start = skipAll(pad, at + 1, between);
  if (/^(at|at2|at6)$/.test(wordAt(pad, start))) return start;
  const upper = numberAt(pad.words, start);
  if (upper === null || !isSize(upper)) return at;
  const lowerAt = skipAll(pad, upper.next, between);
  const lower = numberAt(pad.words, lowerAt);
  const next = note(pad, "gripAt2InMm", start, upper, upper.next);
  return lower === null || !isSize(lower) ? next : note(pad, "gripAt6InMm", lowerAt, lower, lower.next);
}

const isSize = ({ unit, signed }: NumberHit): boolean => !signed && (unit === null || unit === "in" || unit === "mm");

function note(pad: Notepad, quantity: GaugeOnly, at: number, hit: NumberHit, next: number): number {
  const { min, max, inchesBelow, accepted } = ranges[quantity];
  const isInches = hit.unit === "in" || (hit.unit === null && Math.abs(hit.value) < inchesBelow);
  const value = isInches ? hit.value * MM_PER_INCH : hit.value;
  noteComma(pad, at, hit.next);
  if (value < min || value > max) ask(pad, "value-out-of-range", placeOf(pad, at, hit.numberEnd), accepted);
  else gauged(pad, quantity, value, at, hit.next);
  return next;
}
