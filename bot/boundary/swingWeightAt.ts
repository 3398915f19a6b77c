import { numberAt } from "./numberAt.ts";
import type { Word } from "./wordsOf.ts";

const POINTS_PER_LETTER = 10;
const LARGEST_NUMBER = 10;
const tightShape = /^([a-g])(\d{1,2}(?:\.\d{1,3})?)$/;

interface SwingWeightHit {
  /** Points, D0 = 0; infinite for a number no letter has, such as `d14`: the caller refuses. */
  readonly points: number;
  readonly next: number;
}

/** Reads `d3`, `D 3.5`, `d3 1/2` at a word; letters far from D need `spacedToo` (after `swing`) when parted from the number. */
export function swingWeightAt(words: readonly Word[], at: number, afterSwing: boolean): SwingWeightHit | null {
  const word = words[at];
  if (word === undefined) return null;
  const tight = tightShape.exec(word.text);
  if (tight !== null) {
    const letter = tight[1] ?? "d";
    if (!afterSwing && !/^[c-f]$/.test(letter)) return null;
    const number = Number(tight[2]);
    const fraction = words[at + 1]?.gap === "space" && Number.isInteger(number) ? numberAt(words, at + 1) : null;
    const added =
      fraction?.fraction === true && !fraction.signed && fraction.value < 1 && fraction.unit === null && /^\d/.test(words[at + 1]?.text ?? "");
    return { points: pointsOf(letter, number + (added ? (fraction?.value ?? 0) : 0)), next: added ? at + 2 : at + 1 };
  }
  const spaced = afterSwing ? /^[a-g]$/ : /^[c-f]$/;
  const following = words[at + 1];
  if (!spaced.test(word.text) || following?.gap !== "space" || !/^\d/.test(following.text)) return null;
  const number = numberAt(words, at + 1);
  if (number === null || number.signed || number.unit !== null || number.value >= 100) return null;
  return { points: pointsOf(word.text, number.value), next: number.next };
}

/** Whether `sw` here is the swing weight, not the sand wedge: a letter with its number comes next. */
export const isSwingWord = (words: readonly Word[], at: number): boolean => words[at]?.text === "sw" && swingWeightAt(words, at + 1, true) !== null;

function pointsOf(letter: string, number: number): number {
  if (number > LARGEST_NUMBER) return Number.POSITIVE_INFINITY;
  return (letter.charCodeAt(0) - "d".charCodeAt(0)) * POINTS_PER_LETTER + number;
}
