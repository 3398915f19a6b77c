import { type Word, wordsOf } from "../wordsOf.ts";

/** The words of a calculation with the text they were cut from. */
export interface CalcWords {
  readonly text: string;
  readonly words: readonly Word[];
}

/** Three numbers and more parted by commas alone are no decimals: `2,2,4,6`. */
const tightList = /(?<![\d.,])\d{1,3}(?:,\d{1,3}){2,}(?![\d.,])/g;
const tightUnit = /(\d)(ozs?|kg|cm|cpm|ms?|s|yds?|ft)(?![a-z\d])/gi;

/** Parts a calculation's text into words: `@` is `at`, a unit run into its number stands apart, units of two words are one. */
export function calcWords(written: string): CalcWords {
  const text = written
    .replace(/@/g, " at ")
    .replace(tightList, (list) => list.replace(/,/g, ", "))
    .replace(/(?<![a-z])(k?g) ?[·*.-]? ?cm ?(?:²|\^?2(?!\d))/gi, " $1cmsq ")
    .replace(/(?<![a-z])n ?[·*.-]? ?m ?(?:²|\^?2(?!\d))/gi, " nmsq ")
    .replace(tightUnit, "$1 $2");
  return { text, words: wordsOf(text).words };
}

/** `for oxtoby`, `on oxtoby driver`: the text without the word before its subject. */
export const withoutLead = (text: string): string => text.replace(/^\s*(?:on|for|of)\s+/i, "");

/** What people wrote from one word up to another. */
export function typedBetween({ text, words }: CalcWords, at: number, next: number): string {
  const [first, last] = [words[at], words[next - 1]];
  return first === undefined || last === undefined ? "" : text.slice(first.from, last.to);
}

/** Whether a word goes on with what stands before it, no comma or line between. */
export const goesOn = ({ words }: CalcWords, at: number): boolean => words[at]?.gap === "space" || words[at]?.gap === "tight";
