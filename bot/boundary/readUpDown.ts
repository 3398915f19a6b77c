import { directionOf } from "./amountAt.ts";
import { ask, asOptions, familyOf, follows, judgeAmount, type Notepad, placeOf, typed, wordAt } from "./notepad.ts";
import { type NumberHit, numberAt } from "./numberAt.ts";

const MOST_MARKS = 4;

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
      judgeAmount(pad, "seatedLieDeg", at, { amount: { kind: "by", value: sign * hit.value }, perUnit: 1, numberFrom: at, numberEnd: next, next });
      return;
    }
    const number = String(hit.value);
    const meanings =
      sign > 0 ? [`${number} weaker`, `${number} mark up`, `${number} upright`] : [`${number} stronger`, `${number} mark down`, `${number} flatter`];
    ask(pad, "which-meaning", placeOf(pad, at, next), "degrees of loft, sleeve marks, or degrees of lie", asOptions(meanings));
  });
}

export function askMark(pad: Notepad, at: number, hit: NumberHit, sign: -1 | 0 | 1): number {
  const next = hit.next + 1;
  const number = String(hit.value);
  const meanings = sign > 0 ? [`${number} mark up`, `${number}° weaker`] : [`${number} mark down`, `${number}° stronger`];
  ask(pad, "which-mark", placeOf(pad, at, next), "sleeve marks or degrees of loft", asOptions(meanings));
  return next;
}

function turnBy(pad: Notepad, at: number, marks: number, next: number): number {
  const before = pad.wishes.get("sleeve");
  pad.leaning ??= placeOf(pad, at, next);
  if (Math.abs(marks) > MOST_MARKS) ask(pad, "value-out-of-range", placeOf(pad, at, next), `up to ${MOST_MARKS} marks`);
  else if (before !== undefined) ask(pad, "twice", placeOf(pad, at, next), "one value for each clause", asOptions([before.wish.asWritten]));
  else pad.wishes.set("sleeve", { wish: { value: { kind: "turn", marks }, asWritten: typed(pad, at, next) }, place: placeOf(pad, at, next) });
  return next;
}
