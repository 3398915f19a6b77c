import {
  type Degrees,
  degrees,
  type Millimetres,
  MM_PER_INCH,
  millimetres,
  type SwingWeightPoints,
  swingWeightPoints,
} from "../../core/quantity/units.ts";
import { numberAt } from "./numberAt.ts";
import { swingWeightAt } from "./swingWeightAt.ts";
import { type Word, wordsOf } from "./wordsOf.ts";

const LONGEST_QUANTITY = 40;
const MOST_INCHES_WITHOUT_UNIT = 100;
const SMALLEST_POINTS = -30;
const LARGEST_POINTS = 40;

const wordsOfValue = (text: string): readonly Word[] => (text.length > LONGEST_QUANTITY ? [] : wordsOf(text).words);

/** A length as people write it: `45 1/4`, `45.25"`, `45 1/4 in`, `1149 mm`; null when it is none. */
export function readLengthMm(text: string): Millimetres | null {
  const words = wordsOfValue(text);
  const hit = numberAt(words, 0);
  if (hit === null || hit.next !== words.length || !(hit.value > 0)) return null;
  if (hit.unit === "mm" || (hit.unit === null && hit.value >= MOST_INCHES_WITHOUT_UNIT)) return millimetres(hit.value);
  return hit.unit === null || hit.unit === "in" ? millimetres(hit.value * MM_PER_INCH) : null;
}

/** An angle: `9.25`, `9 1/4°`, `half`, `0.5 open` (positive), `1/2 closed` (negative); null when it is none. */
export function readAngleDeg(text: string): Degrees | null {
  const words = wordsOfValue(text);
  if (words.length === 1 && words[0]?.text === "square") return degrees(0);
  const hit = numberAt(words, 0);
  if (hit === null || (hit.unit !== null && hit.unit !== "deg")) return null;
  if (hit.next === words.length) return degrees(hit.value);
  const side = words[hit.next]?.text ?? "";
  if (hit.next + 1 !== words.length || hit.signed || !/^(open|closed|shut)$/.test(side)) return null;
  return degrees(side === "open" ? hit.value : -hit.value);
}

/** A swing weight from A0 to G10 in points, D0 = 0: `d3`, `D 3.5`; null when it is none. */
export function readSwingWeight(text: string): SwingWeightPoints | null {
  const words = wordsOfValue(text);
  const hit = swingWeightAt(words, 0, true);
  if (hit === null || hit.next !== words.length || hit.points < SMALLEST_POINTS || hit.points > LARGEST_POINTS) return null;
  return swingWeightPoints(hit.points);
}
