import { MM_PER_INCH } from "../../core/quantity/units.ts";
import { type AmountQuantity, amountAt, directionOf, mmPerWritten } from "./amountAt.ts";
import {
  ask,
  asOptions,
  familyOf,
  follows,
  isAccepted,
  mend,
  type Notepad,
  placeOf,
  typed,
  type WrittenAmount,
  wishAmount,
  wishStamp,
  wordAt,
} from "./notepad.ts";
import { type NumberHit, numberAt } from "./numberAt.ts";
import { rangeOf } from "./quantityRanges.ts";
import { swingWeightAt } from "./swingWeightAt.ts";
import { isClauseWord, quantityOfWord } from "./vocabulary.ts";

const between = new Set(["is", "to", "at", "of", "as", "around", "about", "exactly", "now", "be", "make", "it", "a"]);
const twoWords: Readonly<Record<string, string>> = { swing: "weight", total: "weight", tip: "trim" };
/** How far from the usual length of its club a number without a word may be and still be a length. */
const USUAL_MM = 6 * MM_PER_INCH;
const WIDEST_USUAL_MM = 15 * MM_PER_INCH;
/** No head weighs as much and no club less, putters apart: a measured mass above it is the club's (common practice, no source). */
const LIGHTEST_CLUB_G = 280;
const keeps = new Set(["same", "keep", "hold"]);

/** The quantity named at a word and where its value starts: `swing`, `swing weight`, `head weight`. */
function namedQuantity(pad: Notepad, at: number): { readonly quantity: AmountQuantity; readonly next: number } | null {
  const word = wordAt(pad, at);
  if ((word === "head" || word === "hd") && wordAt(pad, at + 1) === "weight") return { quantity: "headMassG", next: at + 2 };
  const quantity = quantityOfWord(word);
  if (quantity === null || quantity === "stampedLoftDeg") return null;
  return { quantity, next: twoWords[word] === wordAt(pad, at + 1) && word !== "" && Object.hasOwn(twoWords, word) ? at + 2 : at + 1 };
}

function valueStart(pad: Notepad, at: number, name: string): number {
  let start = at;
  while (start < at + 2 && pad.words[start] !== undefined && (between.has(wordAt(pad, start)) || wordAt(pad, start) === name)) start += 1;
  return start;
}

export function noteComma(pad: Notepad, from: number, next: number): void {
  for (let at = from; at < next; at += 1) {
    const word = pad.words[at];
    if (word?.decimalComma === true) mend(pad, at, at + 1, word.text, "decimal-comma");
  }
}

function take(pad: Notepad, quantity: AmountQuantity, from: number, written: WrittenAmount): number {
  noteComma(pad, from, written.next);
  wishAmount(pad, quantity, from, written);
  return written.next;
}

/** `loft 9.25`, `swing d3`, `lie 1 flat`, `length stays`. */
export function readNamedAmount(pad: Notepad, at: number): number {
  const named = namedQuantity(pad, at);
  if (named === null) return at;
  const { quantity } = named;
  const start = valueStart(pad, named.next, wordAt(pad, at) === "sw" ? "" : wordAt(pad, at));
  const written = amountAt(pad, quantity, start);
  if (written !== null) return take(pad, quantity, start, written);
  if (wordAt(pad, at) === "sw" || wordAt(pad, at) === "true" || wordAt(pad, at) === "squared") return at;
  return unreadable(pad, quantity, at, start);
}

function unreadable(pad: Notepad, quantity: AmountQuantity, at: number, start: number): number {
  const word = wordAt(pad, start);
  const taken = follows(pad, start) && !isClauseWord(word) && word !== "go" ? start + 1 : start;
  const isPlainNumber = quantity === "swingWeightPoints" && /^\d{1,2}(\.\d{1,2})?$/.test(word) && taken > start;
  const place = placeOf(pad, isPlainNumber ? start : at, taken);
  pad.later.push(() => ask(pad, "value-unreadable", place, rangeOf(quantity, familyOf(pad)).accepted, isPlainNumber ? asOptions([`d${word}`]) : []));
  return taken;
}

/** `9.25 loft`, `45.25 length`: the word after its number, when nothing follows that could be its own value. */
export function readNumberThenName(pad: Notepad, at: number): number {
  const swing = swingWeightAt(pad.words, at, false);
  const hit = swing === null ? numberAt(pad.words, at) : null;
  const nameAt = swing?.next ?? hit?.next ?? at;
  if (nameAt === at || !follows(pad, nameAt)) return at;
  const isLong = wordAt(pad, nameAt) === "long";
  const named = isLong ? ({ quantity: "lengthMm", next: nameAt + 1 } as const) : namedQuantity(pad, nameAt);
  if (named === null || (swing !== null) !== (named.quantity === "swingWeightPoints")) return at;
  if (!isLong && hasOwnValue(pad, named)) return at;
  const written = amountAt(pad, named.quantity, at);
  if (written === null) return at;
  return Math.max(take(pad, named.quantity, at, written), named.next);
}

/** Whether a value after a quantity's word is its own: not `half open` after `true`, nor a number with a word behind it. */
function hasOwnValue(pad: Notepad, named: { readonly quantity: AmountQuantity; readonly next: number }): boolean {
  const start = valueStart(pad, named.next, "");
  const written = follows(pad, named.next) ? amountAt(pad, named.quantity, start) : null;
  if (written === null) return false;
  const behind = follows(pad, written.next) ? wordAt(pad, written.next) : "";
  const pointsElsewhere = directionOf(named.quantity, behind) === 0 && leanOrder.some((quantity) => directionOf(quantity, behind) !== 0);
  const isNamedBehind = namedQuantity(pad, written.next) !== null && follows(pad, written.next) && numberAt(pad.words, written.next + 1) === null;
  return !pointsElsewhere && !isNamedBehind;
}

/** `swing stays` is read by its name; here `same swing`, `keep swing`, `hold length`. */
export function readKept(pad: Notepad, at: number): number {
  if (!keeps.has(wordAt(pad, at))) return at;
  const start = ["the", "his", "her"].includes(wordAt(pad, at + 1)) ? at + 2 : at + 1;
  const named = namedQuantity(pad, start);
  if (named === null) {
    if (!/^(shaft|grip|head|sleeve)$/.test(wordAt(pad, start))) return at;
    pad.leaning ??= placeOf(pad, at, start + 1);
    return start + 1;
  }
  if (amountAt(pad, named.quantity, named.next) !== null) return at;
  wishAmount(pad, named.quantity, at, { amount: { kind: "same" }, perUnit: 1, numberFrom: at, numberEnd: named.next, next: named.next });
  return named.next;
}

/** `d3`, `D 3.5`. */
export function readSwing(pad: Notepad, at: number): number {
  const swing = swingWeightAt(pad.words, at, false);
  if (swing === null) return at;
  const amount = { kind: "exactly", value: swing.points } as const;
  return take(pad, "swingWeightPoints", at, { amount, perUnit: 1, numberFrom: at, numberEnd: swing.next, next: swing.next });
}

const leanOrder: readonly AmountQuantity[] = ["squaredLoftDeg", "lengthMm", "seatedLieDeg", "soledFaceDeg"];
const upDown = new Set(["up", "down", "higher", "lower", "more", "less", "extra", "over", "under"]);

/** `1/2 stronger`, `1/4 shorter`, `2 points heavier`, `+1 wrap`, `half open`, `open 0.5`. */
export function readLeaningAmount(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (["extra", "another", "more"].includes(word) && wordAt(pad, at + 1) === "wrap") return wrapsBy(pad, at, 1, at + 2);
  if (word === "square" || word === "squared") return wordAt(pad, at + 1) === "face" || word === "square" ? squareFace(pad, at) : at;
  const hit = numberAt(pad.words, at);
  if (hit !== null) return readNumberLed(pad, at, hit);
  if (upDown.has(word)) return at;
  const quantity = leanOrder.find((candidate) => directionOf(candidate, word) !== 0);
  if (quantity === undefined || !follows(pad, at + 1)) return at;
  const written = amountAt(pad, quantity, at);
  return written === null ? at : take(pad, quantity, at, written);
}

function squareFace(pad: Notepad, at: number): number {
  const next = wordAt(pad, at + 1) === "face" ? at + 2 : at + 1;
  return take(pad, "soledFaceDeg", at, { amount: { kind: "exactly", value: 0 }, perUnit: 1, numberFrom: at, numberEnd: next, next });
}

function wrapsBy(pad: Notepad, at: number, value: number, next: number): number {
  return take(pad, "wraps", at, { amount: { kind: "by", value }, perUnit: 1, numberFrom: at, numberEnd: at + 1, next });
}

function readNumberLed(pad: Notepad, at: number, hit: NumberHit): number {
  if (hit.unit === "wrap") {
    const amount = { kind: hit.signed ? "by" : "exactly", value: hit.value } as const;
    return take(pad, "wraps", at, { amount, perUnit: 1, numberFrom: at, numberEnd: hit.numberEnd, next: hit.next });
  }
  if (!follows(pad, hit.next)) return at;
  const following = wordAt(pad, hit.next);
  if (following === "more" || following === "less" || following === "extra") return readMoreOf(pad, at, hit);
  if (upDown.has(following) || following === "heavy" || following === "light") return at;
  if (["heavier", "lighter"].includes(following)) return readHeavier(pad, at, hit);
  const quantity = leanOrder.find((candidate) => directionOf(candidate, following) !== 0);
  if (quantity === undefined) return at;
  const written = amountAt(pad, quantity, at);
  if (written === null) return at;
  const isLoftMarkAsked = pad.kind === "turn" && quantity === "squaredLoftDeg" && hit.unit === null;
  if (isLoftMarkAsked) return askMark(pad, at, hit, directionOf(quantity, following));
  return take(pad, quantity, at, written);
}

/** `1 more loft`, `2 more points`, `1/2 less length`, `one more wrap`, `1/2 more open`. */
function readMoreOf(pad: Notepad, at: number, hit: NumberHit): number {
  const sign = wordAt(pad, hit.next) === "less" ? -1 : 1;
  const nameAt = hit.next + 1;
  const name = wordAt(pad, nameAt);
  if (name === "wrap" || name === "wraps") return wrapsBy(pad, at, sign * hit.value, nameAt + 1);
  const isPoints = name === "point" || name === "points";
  const open = directionOf("soledFaceDeg", name);
  const named = isPoints ? ({ quantity: "swingWeightPoints", next: nameAt + 1 } as const) : namedQuantity(pad, nameAt);
  const quantity = open !== 0 && sign === 1 ? "soledFaceDeg" : named?.quantity;
  if (quantity === undefined) return at;
  const perUnit = quantity === "lengthMm" || quantity === "tipTrimMm" ? mmPerWritten(pad, hit, true) : 1;
  const value = (open === 0 ? sign : open) * hit.value * perUnit;
  return take(pad, quantity, at, {
    amount: { kind: "by", value },
    perUnit,
    numberFrom: at,
    numberEnd: hit.numberEnd,
    next: named?.next ?? nameAt + 1,
  });
}

function readHeavier(pad: Notepad, at: number, hit: NumberHit): number {
  const sign = wordAt(pad, hit.next) === "heavier" ? 1 : -1;
  const next = hit.next + 1;
  if (hit.unit === null || hit.unit === "point") {
    const amount = { kind: "by", value: sign * hit.value } as const;
    return take(pad, "swingWeightPoints", at, { amount, perUnit: 1, numberFrom: at, numberEnd: hit.numberEnd, next });
  }
  if (hit.unit !== "g") return at;
  const change = `${sign > 0 ? "+" : "-"}${hit.value}g`;
  ask(pad, "which-meaning", placeOf(pad, at, next), "the head or the whole club", asOptions([`headweight ${change}`, `total ${change}`]));
  pad.leaning ??= placeOf(pad, at, next);
  return next;
}

/** `one up`, `down 1`, `1 mark down`: on a wood three different things, so it is asked; on an iron or wedge it is lie. */
export function readUpDown(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  const leads = word === "up" || word === "down";
  const numberFrom = leads ? at + 1 : at;
  const hit = leads && !follows(pad, numberFrom) ? null : numberAt(pad.words, numberFrom);
  if (hit === null) return at;
  const following = follows(pad, hit.next) ? wordAt(pad, hit.next) : "";
  const direction = leads ? word : following;
  const sign = directionOf("squaredLoftDeg", direction);
  if (hit.unit === "mark" && sign !== 0) return turnBy(pad, at, sign * hit.value, leads ? hit.next : hit.next + 1);
  if (direction !== "up" && direction !== "down") return at;
  const next = leads ? hit.next : hit.next + 1;
  if (pad.kind === "turn" && hit.unit === null) return askMark(pad, at, { ...hit, next: leads ? hit.next - 1 : hit.next }, sign);
  if (hit.unit !== null && hit.unit !== "deg") return at;
  judgeUpDown(pad, at, next, hit, sign);
  return next;
}

function judgeUpDown(pad: Notepad, at: number, next: number, hit: NumberHit, sign: -1 | 0 | 1): void {
  pad.leaning ??= placeOf(pad, at, next);
  pad.later.push(() => {
    const family = familyOf(pad);
    if (family === "iron" || family === "wedge" || family === "putter") {
      take(pad, "seatedLieDeg", at, { amount: { kind: "by", value: sign * hit.value }, perUnit: 1, numberFrom: at, numberEnd: next, next });
      return;
    }
    const number = String(hit.value);
    const meanings =
      sign > 0 ? [`${number} weaker`, `${number} mark up`, `${number} upright`] : [`${number} stronger`, `${number} mark down`, `${number} flatter`];
    ask(pad, "which-meaning", placeOf(pad, at, next), "degrees of loft, sleeve marks, or degrees of lie", asOptions(meanings));
  });
}

function askMark(pad: Notepad, at: number, hit: NumberHit, sign: -1 | 0 | 1): number {
  const next = hit.next + 1;
  const number = String(hit.value);
  const meanings = sign > 0 ? [`${number} mark up`, `${number}° weaker`] : [`${number} mark down`, `${number}° stronger`];
  ask(pad, "which-mark", placeOf(pad, at, next), "sleeve marks or degrees of loft", asOptions(meanings));
  return next;
}

function turnBy(pad: Notepad, at: number, marks: number, next: number): number {
  const before = pad.wishes.get("sleeve");
  pad.leaning ??= placeOf(pad, at, next);
  if (before !== undefined) ask(pad, "twice", placeOf(pad, at, next), "one value for each clause", asOptions([before.wish.asWritten]));
  else pad.wishes.set("sleeve", { wish: { value: { kind: "turn", marks }, asWritten: typed(pad, at, next) }, place: placeOf(pad, at, next) });
  return next;
}

/** A number without a word: the stamp right after a club, a length by its size, else it is asked. */
export function readBareNumber(pad: Notepad, at: number): number {
  const hit = numberAt(pad.words, at);
  if (hit === null) return at;
  if (pad.last === "grip" && pad.lastEnd === at && hit.signed) return wrapsBy(pad, at, hit.value, hit.next);
  if (hit.unit !== null && hit.unit !== "in" && hit.unit !== "mm" && hit.unit !== "deg") return hit.unit === "g" ? grams(pad, at, hit) : at;
  const afterClub = pad.last === "club" && pad.lastEnd === at && follows(pad, at) && pad.clubs.length === 1;
  if (wordAt(pad, at).length > 1 && /^[a-z]+$/.test(wordAt(pad, at))) return at;
  noteComma(pad, at, hit.next);
  pad.later.push(() => judgeBare(pad, at, hit, afterClub));
  return hit.next;
}

function grams(pad: Notepad, at: number, hit: NumberHit): number {
  if (pad.mode === "measured" && hit.value >= LIGHTEST_CLUB_G) {
    return take(pad, "totalMassG", at, {
      amount: { kind: "exactly", value: hit.value },
      perUnit: 1,
      numberFrom: at,
      numberEnd: hit.numberEnd,
      next: hit.next,
    });
  }
  const number = typed(pad, at, hit.next);
  ask(pad, "which-meaning", placeOf(pad, at, hit.next), "what the weight is of", asOptions([`headweight ${number}`, `total ${number}`]));
  return hit.next;
}

function judgeBare(pad: Notepad, at: number, hit: NumberHit, afterClub: boolean): void {
  const family = familyOf(pad);
  const lengthRange = rangeOf("lengthMm", family);
  const perUnit = mmPerWritten(pad, hit, false);
  const lengthMm = hit.value * perUnit;
  const isUsual = hit.unit !== null || Math.abs(lengthMm - lengthRange.typical) <= (family === null ? WIDEST_USUAL_MM : USUAL_MM);
  const isLength = hit.unit !== "deg" && isUsual && lengthMm >= lengthRange.min && lengthMm <= lengthRange.max;
  const loftRange = rangeOf("squaredLoftDeg", family);
  const isLoft = !hit.fraction && hit.unit !== "in" && hit.unit !== "mm" && hit.value >= loftRange.min && hit.value <= loftRange.max;
  const isStamp = isLoft && hit.unit === null && Number.isInteger(hit.value * 2);
  if (afterClub && isStamp) return wishStamp(pad, hit.value, at, hit.next);
  const writesLength = hit.fraction || hit.unit === "in" || hit.unit === "mm" || perUnit === 1 || family === null;
  const numbers = { perUnit, numberFrom: at, numberEnd: hit.numberEnd, next: hit.next };
  if (writesLength ? !isLoft || isLength : isLength && !isLoft) {
    wishAmount(pad, "lengthMm", at, { amount: { kind: "exactly", value: lengthMm }, ...numbers });
    return;
  }
  if (!isLoft) {
    isAccepted(pad, "squaredLoftDeg", { amount: { kind: "exactly", value: hit.value }, ...numbers, perUnit: 1 });
    return;
  }
  const written = typed(pad, at, hit.next);
  const meanings = [`loft ${written}`, `head ${written}`, ...(isLength ? [`length ${written}`] : [])];
  ask(pad, "which-meaning", placeOf(pad, at, hit.next), "what the number is", asOptions(meanings));
}
