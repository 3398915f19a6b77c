import type { Word, Words } from "./wordsOf.ts";

export interface Message extends Words {
  readonly text: string;
}

/** Drops a last `go` and says whether it was there. */
export function withoutGo(words: readonly Word[]): { readonly words: readonly Word[]; readonly go: boolean } {
  const go = words.length > 1 && words.at(-1)?.text === "go";
  return { words: go ? words.slice(0, -1) : words, go };
}
