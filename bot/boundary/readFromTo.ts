import { type AmountQuantity, directionOf } from "./amountAt.ts";
import { leanOrder } from "./leanOrder.ts";
import { namedQuantity, valueStart } from "./namedQuantity.ts";
import { familyOf, follows, judgeAmount, type Notepad, wordAt } from "./notepad.ts";
import { type NumberHit, numberAt } from "./numberAt.ts";
import { rangeOf } from "./quantityRanges.ts";
import { noteComma } from "./takeAmount.ts";

const angles: ReadonlySet<AmountQuantity> = new Set<AmountQuantity>(["squaredLoftDeg", "seatedLieDeg", "bounceDeg"]);

/** What a bend, or a sole's bounce, is to end at: `56 to 54`, `lie 62 to 61`, `to 54`, and a number right after the club. */
export function readFromTo(pad: Notepad, at: number): number {
  const named = angleNamed(pad, at);
  if (pad.kind !== "bend" && (pad.kind !== "grind" || named === null)) return at;
  const start = named === null ? at : valueStart(pad, named.next, wordAt(pad, at));
  const from = angleAt(pad, start);
  const target = from === null ? (named === null && wordAt(pad, at) === "to" ? at + 1 : null) : targetAfter(pad, from.next);
  const isAfterClub = named === null && pad.last === "club" && pad.lastEnd === at;
  const hit = target === null ? (isAfterClub ? from : null) : angleAt(pad, target);
  if (hit === null || pointsSomewhere(pad, hit.next)) return at;
  const numberFrom = target ?? start;
  noteComma(pad, numberFrom, hit.next);
  pad.later.push(() => {
    const amount = { kind: "exactly", value: hit.value } as const;
    judgeAmount(pad, named?.quantity ?? loftOrLie(pad, hit.value), numberFrom, { ...hit, amount, perUnit: 1, numberFrom });
  });
  return hit.next;
}

function angleNamed(pad: Notepad, at: number): ReturnType<typeof namedQuantity> {
  const named = namedQuantity(pad, at);
  return named !== null && angles.has(named.quantity) ? named : null;
}

function angleAt(pad: Notepad, at: number): NumberHit | null {
  const hit = numberAt(pad.words, at);
  const isAngle = hit !== null && (hit.unit === null || hit.unit === "deg");
  return isAngle && (!hit.signed || familyOf(pad) === "putter") ? hit : null;
}

/** Where the number after `to`, `>` or `->` stands. */
function targetAfter(pad: Notepad, at: number): number | null {
  if (wordAt(pad, at) === "to") return at + 1;
  const between = pad.text.slice(pad.words[at - 1]?.to ?? 0, pad.words[at]?.from ?? 0);
  return between.includes(">") ? at : null;
}

/** `1 flat`, `1/2 weaker`, `2 up`: a change and not an end. */
function pointsSomewhere(pad: Notepad, at: number): boolean {
  const word = follows(pad, at) ? wordAt(pad, at) : "";
  const behind = angleNamed(pad, at);
  const isNamed = behind !== null && angleAt(pad, valueStart(pad, behind.next, word)) === null;
  return isNamed || word === "up" || word === "down" || leanOrder.some((quantity) => directionOf(quantity, word) !== 0);
}

function loftOrLie(pad: Notepad, value: number): AmountQuantity {
  const family = familyOf(pad);
  const isIn = (quantity: AmountQuantity): boolean => value >= rangeOf(quantity, family).min && value <= rangeOf(quantity, family).max;
  return !isIn("squaredLoftDeg") && isIn("seatedLieDeg") ? "seatedLieDeg" : "squaredLoftDeg";
}
