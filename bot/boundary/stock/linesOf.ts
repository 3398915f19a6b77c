import { type Word, wordsOf } from "../wordsOf.ts";

/** One line of a text, or a part of it between commas; `row` counts the lines of the text from 1. */
export interface StockLine {
  readonly row: number;
  readonly words: readonly Word[];
  readonly text: string;
}

/** A longer list is refused whole. */
export const MOST_LINES = 2000;

const lineBreak = /\r\n|[\n\r\u2028\u2029]/;

/** The lines that say something. */
export function linesOf(text: string): readonly StockLine[] {
  return text
    .split(lineBreak)
    .map((line, index) => ({ row: index + 1, words: wordsOf(line).words, text: line }))
    .filter(({ words }) => words.length > 0);
}

/** What was typed from one word up to another. */
export const typedIn = ({ words, text }: StockLine, from: number, to = words.length): string =>
  text.slice(words[from]?.from ?? text.length, words[to - 1]?.to ?? text.length);

/** A line cut at its commas and semicolons; `keepsOn` says which words behind one go on all the same. */
export function byCommas(line: StockLine, keepsOn: (word: Word) => boolean = () => false): readonly StockLine[] {
  const starts = line.words.flatMap((word, at) => {
    const gap = at === 0 ? ";" : line.text.slice(line.words[at - 1]?.to ?? 0, word.from);
    return /[,;]/.test(gap) && (at === 0 || !keepsOn(word)) ? [at] : [];
  });
  return starts.map((start, index) => ({ ...line, words: line.words.slice(start, starts[index + 1]) }));
}
