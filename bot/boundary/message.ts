import type { Word, Words } from "./wordsOf.ts";

export interface Message extends Words {
  readonly text: string;
}

/** Drops a last `go` and says where it was, null when there was none. */
export function withoutGo(words: readonly Word[]): { readonly words: readonly Word[]; readonly goFrom: number | null } {
  const last = words.at(-1);
  return last?.text === "go" && words.length > 1 ? { words: words.slice(0, -1), goFrom: last.from } : { words, goFrom: null };
}
