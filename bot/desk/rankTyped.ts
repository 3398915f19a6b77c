import { editDistance } from "../boundary/editDistance.ts";
import { foldText } from "../boundary/foldText.ts";

const LONGEST_TYPED = 100;
/** Below it every word is near every other. */
const SHORTEST_MISSPELT = 3;

/** The words of a text, those with a mark inside also in their parts and without it: `o'brien`, `o`, `brien`, `obrien`. */
const wordsIn = (folded: string): readonly string[] =>
  folded.split(/[\s,·]+/).flatMap((word) => [word, ...word.split(/['\-.]/), word.replace(/['\-.]/g, "")]);

/** Begun as far as it is typed, but for one slip. */
function isNear(typed: string, word: string): boolean {
  if (typed.length < SHORTEST_MISSPELT) {
    return false;
  }
  const beginnings = [0, -1, 1].map((more) => word.slice(0, typed.length + more));
  return beginnings.some((beginning) => editDistance(typed, beginning, 1) !== null);
}

/**
 * Sorts out what is meant by what is typed so far: texts whose words begin with it come first, then those that contain
 * it, then those one slip away; among equals, and where nothing is typed, the order given stays.
 */
export function rankTyped<T extends { readonly text: string }>(typed: string, known: readonly T[]): readonly T[] {
  const whole = foldText(typed.slice(0, LONGEST_TYPED)).trim();
  const typedWords = whole.split(/\s+/);
  const ranks: readonly ((folded: string, words: readonly string[]) => boolean)[] = [
    (_, words) => typedWords.every((part) => words.some((word) => word.startsWith(part))),
    (folded) => folded.includes(whole),
    (_, words) => typedWords.every((part) => words.some((word) => word.startsWith(part) || isNear(part, word))),
  ];
  return known
    .flatMap((item) => {
      const folded = foldText(item.text);
      const words = wordsIn(folded);
      const rank = ranks.findIndex((fits) => fits(folded, words));
      return rank < 0 ? [] : [{ item, rank }];
    })
    .sort((one, other) => one.rank - other.rank)
    .map(({ item }) => item);
}
