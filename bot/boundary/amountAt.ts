import type { Amount } from "../../core/buildSheet/buildRequest.ts";
import { MM_PER_INCH } from "../../core/quantity/units.ts";
import { follows, type Notepad, type WrittenAmount, wordAt } from "./notepad.ts";
import { type NumberHit, numberAt, type WrittenUnit } from "./numberAt.ts";
import type { RangedQuantity } from "./quantityRanges.ts";
import { swingWeightAt } from "./swingWeightAt.ts";

export type AmountQuantity = Exclude<RangedQuantity, "stampedLoftDeg">;

const MOST_INCHES_WITHOUT_UNIT = 100;
const more = ["more", "extra", "up", "higher", "+"];
const less = ["less", "fewer", "down", "lower"];
/** Which way each word points, by quantity; `more` and `less` point everywhere. */
const directions: Readonly<Record<AmountQuantity, { readonly up: readonly string[]; readonly down: readonly string[] }>> = {
  squaredLoftDeg: { up: ["weaker", "weak", "wk", "wkr"], down: ["stronger", "strong", "str", "strng", "strngr"] },
  seatedLieDeg: { up: ["upright", "uprite"], down: ["flat", "flatter", "flt"] },
  soledFaceDeg: { up: ["open", "opened"], down: ["closed", "close", "shut", "clsd"] },
  bounceDeg: { up: [], down: [] },
  lengthMm: { up: ["longer", "over"], down: ["shorter", "short", "shrtr", "under"] },
  swingWeightPoints: { up: ["heavier", "heavy"], down: ["lighter", "light"] },
  totalMassG: { up: ["heavier"], down: ["lighter"] },
  headMassG: { up: ["heavier"], down: ["lighter"] },
  tipTrimMm: { up: [], down: [] },
  wraps: { up: [], down: [] },
};
const units: Readonly<Record<AmountQuantity, readonly WrittenUnit[]>> = {
  squaredLoftDeg: ["deg"],
  seatedLieDeg: ["deg"],
  soledFaceDeg: ["deg"],
  bounceDeg: ["deg"],
  lengthMm: ["in", "mm"],
  swingWeightPoints: ["point"],
  totalMassG: ["g"],
  headMassG: ["g"],
  tipTrimMm: ["in", "mm"],
  wraps: ["wrap"],
};
const sames = new Set(["same", "stays", "stay", "held", "unchanged", "constant"]);

/** 1 for a word that says more of a quantity, -1 for less, 0 for neither. */
export function directionOf(quantity: AmountQuantity, word: string): -1 | 0 | 1 {
  if (more.includes(word) || directions[quantity].up.includes(word)) return 1;
  return less.includes(word) || directions[quantity].down.includes(word) ? -1 : 0;
}

/** Millimetres in one written unit of length: inches unless the unit or the size says otherwise. */
export function mmPerWritten(pad: Notepad, hit: Pick<NumberHit, "unit" | "value" | "fraction">, isChange: boolean): number {
  if (hit.unit === "mm" || (hit.unit === null && Math.abs(hit.value) >= MOST_INCHES_WITHOUT_UNIT)) return 1;
  const smallInMm = isChange && hit.unit === null && !hit.fraction && Math.abs(hit.value) >= 2 && pad.context.lengthUnit === "mm";
  return smallInMm ? 1 : MM_PER_INCH;
}

/** Reads the value of a quantity after its word: exact, a difference, or "stays". */
export function amountAt(pad: Notepad, quantity: AmountQuantity, at: number): WrittenAmount | null {
  const word = wordAt(pad, at);
  if (sames.has(word)) return { amount: { kind: "same" }, perUnit: 1, numberFrom: at, numberEnd: at + 1, next: at + 1 };
  if (quantity === "soledFaceDeg" && (word === "square" || word === "sq")) return exactly(0, at, at + 1);
  if (quantity === "swingWeightPoints") {
    const swing = swingWeightAt(pad.words, at, true);
    if (swing !== null) return exactly(swing.points, at, swing.next);
  }
  const before = directionOf(quantity, word);
  const numberFrom = before === 0 ? at : at + 1;
  if (before !== 0 && !follows(pad, numberFrom)) return null;
  const hit = numberAt(pad.words, numberFrom);
  if (hit === null || (hit.unit !== null && !units[quantity].includes(hit.unit))) return null;
  return directed(pad, quantity, hit, { before, beforeWord: word, numberFrom });
}

function exactly(value: number, at: number, next: number): WrittenAmount {
  return { amount: { kind: "exactly", value }, perUnit: 1, numberFrom: at, numberEnd: next, next };
}

interface Direction {
  readonly before: -1 | 0 | 1;
  readonly beforeWord: string;
  readonly numberFrom: number;
}

function directed(pad: Notepad, quantity: AmountQuantity, hit: NumberHit, direction: Direction): WrittenAmount | null {
  const moreWord = wordAt(pad, hit.next) === "more" && follows(pad, hit.next + 1) && directionOf(quantity, wordAt(pad, hit.next + 1)) !== 0;
  const afterAt = moreWord ? hit.next + 1 : hit.next;
  const after = direction.before === 0 && follows(pad, hit.next) ? directionOf(quantity, wordAt(pad, afterAt)) : 0;
  const sign = direction.before !== 0 ? direction.before : after;
  const next = after !== 0 ? afterAt + 1 : hit.next;
  const isFace = quantity === "soledFaceDeg";
  const openOrShut = after !== 0 ? wordAt(pad, afterAt) : direction.beforeWord;
  const isChange = isFace
    ? moreWord || (sign !== 0 && [...more, ...less].includes(openOrShut))
    : sign !== 0 || (hit.signed && !isPutterLoft(pad, quantity));
  if (quantity === "swingWeightPoints" && !isChange) return null;
  const perUnit = quantity === "lengthMm" || quantity === "tipTrimMm" ? mmPerWritten(pad, hit, isChange) : 1;
  const value = (sign === 0 ? hit.value : sign * Math.abs(hit.value)) * perUnit;
  const amount: Amount = isChange ? { kind: "by", value } : { kind: "exactly", value };
  return { amount, perUnit, numberFrom: direction.numberFrom, numberEnd: hit.numberEnd, next };
}

const isPutterLoft = (pad: Notepad, quantity: AmountQuantity): boolean => quantity === "squaredLoftDeg" && pad.clubs[0] === "putter";
