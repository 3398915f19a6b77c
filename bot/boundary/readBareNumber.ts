import { MM_PER_INCH } from "../../core/quantity/units.ts";
import { mmPerWritten } from "./amountAt.ts";
import { ask, asOptions, familyOf, follows, isAccepted, judgeAmount, type Notepad, placeOf, typed, wishStamp, wordAt } from "./notepad.ts";
import { type NumberHit, numberAt } from "./numberAt.ts";
import { rangeOf } from "./quantityRanges.ts";
import { wrapsBy } from "./readLeaningAmount.ts";
import { noteComma, take } from "./takeAmount.ts";

/** How far from the usual length of its club a number without a word may be and still be a length. */
const USUAL_MM = 6 * MM_PER_INCH;

const WIDEST_USUAL_MM = 15 * MM_PER_INCH;

/** No head weighs as much and no club less, putters apart: a measured mass above it is the club's (common practice, no source). */
const LIGHTEST_CLUB_G = 280;

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
  if (afterClub && isStamp) {
    wishStamp(pad, hit.value, at, hit.next);
    return;
  }
  const writesLength = hit.fraction || hit.unit === "in" || hit.unit === "mm" || perUnit === 1 || family === null;
  const numbers = { perUnit, numberFrom: at, numberEnd: hit.numberEnd, next: hit.next };
  if (writesLength ? !isLoft || isLength : isLength && !isLoft) {
    judgeAmount(pad, "lengthMm", at, { amount: { kind: "exactly", value: lengthMm }, ...numbers });
    return;
  }
  if (!isLoft) {
    const isAsked = !isAccepted(pad, "squaredLoftDeg", { amount: { kind: "exactly", value: hit.value }, ...numbers, perUnit: 1 });
    if (isAsked) nameGuesses(pad, afterClub && Number.isInteger(hit.value * 2) ? "head" : "loft");
    return;
  }
  const written = typed(pad, at, hit.next);
  const meanings = [`loft ${written}`, `head ${written}`, ...(isLength ? [`length ${written}`] : [])];
  ask(pad, "which-meaning", placeOf(pad, at, hit.next), "what the number is", asOptions(meanings));
}

/** The guesses of the last question say which clause they are of, as the number did not. */
function nameGuesses(pad: Notepad, clause: "head" | "loft"): void {
  const asked = pad.problems.pop();
  if (asked === undefined) return;
  pad.problems.push({ ...asked, options: asOptions(asked.options.map(({ replacement }) => `${clause} ${replacement}`)) });
}
