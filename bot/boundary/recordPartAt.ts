import { type PartHit, partAt } from "./partAt.ts";
import type { ReadingContext } from "./reading.ts";
import { type Word, wordsOf } from "./wordsOf.ts";

/** Reads a part's name that begins at a word, or the code word of a restricted model: that one whole, never mended or completed. */
export function recordPartAt(
  words: readonly Word[],
  at: number,
  names: readonly string[],
  { codeWords, byNumbers, mends }: Pick<ReadingContext, "codeWords"> & { readonly byNumbers: boolean; readonly mends: boolean },
): PartHit | null {
  for (const { code, name } of codeWords) {
    const next = names.includes(name) ? behind(words, at, wordsOf(code).words) : null;
    if (next !== null) return { models: [name], next, misspelt: false };
  }
  return partAt(words, at, names, { byNumbers, mends });
}

/** The word behind some words in a row, null where others stand. */
function behind(words: readonly Word[], at: number, wanted: readonly Word[]): number | null {
  const stands = ({ text }: Word, index: number): boolean => {
    const word = words[at + index];
    return word?.text === text && (index === 0 || word.gap === "space" || word.gap === "tight");
  };
  return wanted.length > 0 && wanted.every(stands) ? at + wanted.length : null;
}
