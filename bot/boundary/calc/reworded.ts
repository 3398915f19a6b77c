import { type CalcWords, calcWords } from "./calcWords.ts";

/** Other words for those from one up to `next`. */
interface Rewording {
  readonly words: string;
  readonly next: number;
}

/** Puts other words in place of some, wherever the rule finds them. */
export function reworded(text: string, rule: (source: CalcWords, at: number) => Rewording | null): string {
  const source = calcWords(text);
  const pieces: string[] = [];
  let kept = 0;
  for (let at = 0; at < source.words.length; ) {
    const hit = rule(source, at);
    const [first, last] = [source.words[at], source.words[(hit?.next ?? at) - 1]];
    if (hit !== null && first !== undefined && last !== undefined) {
      pieces.push(source.text.slice(kept, first.from), hit.words);
      kept = last.to;
    }
    at = Math.max(at + 1, hit?.next ?? 0);
  }
  return [...pieces, source.text.slice(kept)].join("");
}
