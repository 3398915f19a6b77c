import { own } from "./own.ts";
import type { Word } from "./wordsOf.ts";

export type WrittenUnit = "in" | "mm" | "deg" | "g" | "point" | "mark" | "wrap";

/** A number as written over one to five words, with its unit when one follows. */
export interface NumberHit {
  readonly value: number;
  /** A leading plus or minus was written. */
  readonly signed: boolean;
  readonly fraction: boolean;
  readonly unit: WrittenUnit | null;
  /** Index after the number itself, and after its unit. */
  readonly numberEnd: number;
  readonly next: number;
  readonly decimalComma: boolean;
}

const spelled: Readonly<Record<string, number>> = {
  half: 0.5,
  quarter: 0.25,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
};
const units: Readonly<Record<string, WrittenUnit>> = {
  '"': "in",
  in: "in",
  ins: "in",
  inch: "in",
  inches: "in",
  inchs: "in",
  mm: "mm",
  mil: "mm",
  mils: "mm",
  "°": "deg",
  deg: "deg",
  degs: "deg",
  degree: "deg",
  degrees: "deg",
  g: "g",
  gr: "g",
  gm: "g",
  gms: "g",
  gram: "g",
  grams: "g",
  pt: "point",
  pts: "point",
  point: "point",
  points: "point",
  mark: "mark",
  marks: "mark",
  notch: "mark",
  notches: "mark",
  click: "mark",
  clicks: "mark",
  wrap: "wrap",
  wraps: "wrap",
  layer: "wrap",
  layers: "wrap",
};
const afterInWhenNoUnit = new Set(["the", "truck", "hand", "play", "bag", "his", "her", "a"]);
const denominators = new Set([2, 3, 4, 8, 16, 32]);
const numberShape = /^([+-]?)(\d{1,6}(?:\.\d{1,6})?|\.\d{1,6})([a-z]{0,3})$/;
const fractionShape = /^([+-]?)(\d{1,2})\/(\d{1,2})([a-z]{0,3})$/;
const hyphenShape = /^(\d{1,4})-(\d{1,2}\/\d{1,2})$/;

const near = (word: Word | undefined): word is Word => word !== undefined && (word.gap === "space" || word.gap === "tight");

interface Part {
  readonly value: number;
  readonly signed: boolean;
  readonly fraction: boolean;
  readonly suffix: string;
}

function partOf(text: string): Part | null {
  const number = numberShape.exec(text);
  if (number !== null) {
    const magnitude = Number(number[2]);
    return { value: number[1] === "-" ? -magnitude : magnitude, signed: number[1] !== "", fraction: false, suffix: number[3] ?? "" };
  }
  const fraction = fractionShape.exec(text);
  if (fraction === null) return null;
  const [above, below] = [Number(fraction[2]), Number(fraction[3])];
  if (!denominators.has(below) || above >= below || above === 0) return null;
  return { value: (fraction[1] === "-" ? -above : above) / below, signed: fraction[1] !== "", fraction: true, suffix: fraction[4] ?? "" };
}

/** What adds to a whole number: `1/4`, `and a quarter`, `and a half`. */
function addedAt(words: readonly Word[], at: number): { readonly value: number; readonly suffix: string; readonly next: number } | null {
  const first = words[at];
  if (!near(first)) return null;
  const part = partOf(first.text);
  if (part?.fraction === true && !part.signed) return { value: part.value, suffix: part.suffix, next: at + 1 };
  if (first.text !== "and" && first.text !== "n") return null;
  const skip = words[at + 1]?.text === "a" ? 2 : 1;
  const word = words[at + skip];
  if (!near(word)) return null;
  const value =
    word.text === "half" ? 0.5 : word.text === "quarter" ? 0.25 : (partOf(word.text)?.fraction ?? false) ? (partOf(word.text)?.value ?? 0) : 0;
  return value > 0 ? { value, suffix: "", next: at + skip + 1 } : null;
}

function spelledAt(words: readonly Word[], at: number): { readonly value: number; readonly next: number } | null {
  const text = words[at]?.text ?? "";
  const following = words[at + 1];
  if (text === "a" && near(following)) {
    if (following.text === "half" || following.text === "quarter") return { value: following.text === "half" ? 0.5 : 0.25, next: at + 2 };
    if (["degree", "point", "mark", "notch", "click", "wrap"].includes(following.text)) return { value: 1, next: at + 1 };
  }
  if (text === "three" && near(following) && (following.text === "quarters" || following.text === "quarter")) return { value: 0.75, next: at + 2 };
  const value = own(spelled, text);
  if (value === null) return null;
  const skipped = value < 1 && near(following) && ["a", "an"].includes(following.text) && own(units, words[at + 2]?.text ?? "") !== null;
  return { value, next: skipped ? at + 2 : at + 1 };
}

function unitAt(words: readonly Word[], at: number): WrittenUnit | null {
  const word = words[at];
  if (!near(word)) return null;
  const following = words[at + 1]?.text ?? "";
  if (word.text === "in" && (afterInWhenNoUnit.has(following) || /^\d/.test(following)) && word.gap !== "tight") return null;
  return own(units, word.text);
}

function finish(words: readonly Word[], at: number, part: Part, decimalComma: boolean): NumberHit | null {
  const added =
    !part.fraction && !part.signed && part.suffix === "" && Number.isInteger(part.value) && part.value >= 0 ? addedAt(words, at + 1) : null;
  const suffix = added?.suffix ?? part.suffix;
  if (suffix !== "" && own(units, suffix) === null) return null;
  const numberEnd = added?.next ?? at + 1;
  const value = part.value + (added?.value ?? 0);
  const unit = suffix === "" ? unitAt(words, numberEnd) : own(units, suffix);
  const next = suffix === "" && unit !== null ? numberEnd + 1 : numberEnd;
  return { value, signed: part.signed, fraction: part.fraction || added !== null, unit, numberEnd, next, decimalComma };
}

/** Reads a number that begins at a word: `45 1/4 in`, `9,25`, `-0.5°`, `60g`, `45 and a quarter`, `half`, `one`. */
export function numberAt(words: readonly Word[], at: number): NumberHit | null {
  const word = words[at];
  if (word === undefined) return null;
  const following = words[at + 1];
  if (word.text === "+") {
    const hit = following === undefined || following.text === "+" ? null : numberAt(words, at + 1);
    return hit === null || hit.signed ? null : { ...hit, signed: true };
  }
  const hyphened = hyphenShape.exec(word.text);
  if (hyphened !== null) {
    const fraction = partOf(hyphened[2] ?? "");
    if (fraction === null) return null;
    return finish(words, at, { value: Number(hyphened[1]) + fraction.value, signed: false, fraction: true, suffix: fraction.suffix }, false);
  }
  const part = partOf(word.text);
  if (part !== null) return finish(words, at, part, word.decimalComma);
  const inWords = spelledAt(words, at);
  if (inWords === null) return null;
  if (inWords.value >= 1) {
    const added = addedAt(words, inWords.next);
    if (added !== null && (words[inWords.next]?.text === "and" || words[inWords.next]?.text === "n")) {
      const unit = unitAt(words, added.next);
      return hitOf(inWords.value + added.value, true, unit, added.next);
    }
  }
  return hitOf(inWords.value, inWords.value < 1, unitAt(words, inWords.next), inWords.next);
}

function hitOf(value: number, fraction: boolean, unit: WrittenUnit | null, numberEnd: number): NumberHit {
  return { value, signed: false, fraction, unit, numberEnd, next: unit === null ? numberEnd : numberEnd + 1, decimalComma: false };
}
