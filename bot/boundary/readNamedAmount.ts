import { type AmountQuantity, amountAt } from "./amountAt.ts";
import { namedQuantity, valueStart } from "./namedQuantity.ts";
import { ask, asOptions, familyOf, follows, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { rangeOf } from "./quantityRanges.ts";
import { take } from "./takeAmount.ts";
import { isClauseWord } from "./vocabulary.ts";

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
