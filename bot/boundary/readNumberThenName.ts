import { type AmountQuantity, amountAt, directionOf } from "./amountAt.ts";
import { leanOrder } from "./leanOrder.ts";
import { namedQuantity, valueStart } from "./namedQuantity.ts";
import { follows, type Notepad, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { swingWeightAt } from "./swingWeightAt.ts";
import { take } from "./takeAmount.ts";

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
