import { amountAt } from "./amountAt.ts";
import { namedQuantity } from "./namedQuantity.ts";
import { type Notepad, placeOf, wishAmount, wordAt } from "./notepad.ts";

const keeps = new Set(["same", "keep", "hold"]);

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
