import { numberAt } from "./numberAt.ts";
import { swingWeightAt } from "./swingWeightAt.ts";
import type { Word } from "./wordsOf.ts";

const LONGEST_NUMBER_WORDS = 2;

/** The words of `34.5>35 62.5>62`, as they were found and as they were left; `found` names the words only a finding has. */
export interface FoundAndLeft {
  readonly asFound: readonly Word[];
  readonly asLeft: readonly Word[];
  readonly found: readonly Word[];
}

/** Parts a bag check's notation, as found > as left, into the line of each. */
export function foundAndLeft(text: string, words: readonly Word[]): FoundAndLeft {
  const found = new Set<Word>();
  const left = new Set<Word>();
  for (let at = 1; at < words.length; at += 1) {
    if (!/>|→/.test(text.slice(words[at - 1]?.to ?? 0, words[at]?.from ?? 0))) continue;
    const start = startOf(words, at);
    const end = valueEnd(words, at);
    if (start === null || end === null) continue;
    for (const word of words.slice(start, at)) found.add(word);
    for (const word of words.slice(at, end)) left.add(word);
  }
  return { asFound: words.filter((word) => !left.has(word)), asLeft: words.filter((word) => !found.has(word)), found: [...found] };
}

/** Where the number that ends before a word begins. */
function startOf(words: readonly Word[], end: number): number | null {
  for (let start = Math.max(0, end - LONGEST_NUMBER_WORDS); start < end; start += 1) if (valueEnd(words, start) === end) return start;
  return null;
}

const valueEnd = (words: readonly Word[], at: number): number | null =>
  swingWeightAt(words, at, true)?.next ?? numberAt(words, at)?.numberEnd ?? null;
