import { amountAt, directionOf, mmPerWritten } from "./amountAt.ts";
import { leanOrder } from "./leanOrder.ts";
import { namedQuantity } from "./namedQuantity.ts";
import { ask, asOptions, follows, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { type NumberHit, numberAt } from "./numberAt.ts";
import { askMark } from "./readUpDown.ts";
import { take } from "./takeAmount.ts";

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

export function wrapsBy(pad: Notepad, at: number, value: number, next: number): number {
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
