import { subjectOf } from "./questionSubject.ts";
import type { LiveQuestion, ReadingContext } from "./reading.ts";
import type { Word } from "./wordsOf.ts";

const openers = new Set(["can", "could", "is", "are", "does", "do", "will", "would"]);
const twins = new Set(["backup", "backups", "trial", "twin", "twins"]);
const verdicts = new Set(["go", "going", "in", "match", "matches", "same", "close", "enough", "good", "as"]);
const asides = new Set(["ready", "to", "be", "gamer", "club", "it", "its", "play", "him", "i", "you", "put"]);
const nearest = new Set(["closest", "nearest", "closer", "nearer", "matches", "matching", "fits"]);
const headWords = new Set(["which", "what", "whats", "what's", "head", "heads", "one", "to", "gamer", "in", "stock", "have", "got", "do", "there"]);

/** `can toll's backup driver go in?`, `which head is closest to toll's gamer driver?`, `match toll driver`. */
export function readMatchQuestion(words: readonly Word[], asks: boolean, context: ReadingContext): LiveQuestion | null {
  const first = words[0]?.text ?? "";
  const isTwin = openers.has(first);
  const isCommand = first === "match";
  const { player, club, others } = subjectOf(words, isTwin || isCommand ? 1 : 0, context);
  const question: LiveQuestion = { ask: "match", player: player?.id ?? null, club };
  const isAbout = (...known: readonly ReadonlySet<string>[]): boolean => others.every((word) => known.some((set) => set.has(word)));
  if (isCommand) return isAbout(twins, asides) && ((player !== null && club !== null) || asks) ? question : null;
  if (isTwin)
    return others.some((word) => twins.has(word)) && others.some((word) => verdicts.has(word)) && isAbout(twins, verdicts, asides) ? question : null;
  const asksNearest =
    others.some((word) => nearest.has(word)) && /^(head|heads|which|what|whats|what's)$/.test(others.find((word) => !nearest.has(word)) ?? "");
  return asksNearest && (asks || player !== null) && others.some((word) => /^heads?$/.test(word)) && isAbout(nearest, headWords) ? question : null;
}
