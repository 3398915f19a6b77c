import type { ClubName } from "../../core/kinds.ts";
import { type ClubHit, clubAt } from "./clubAt.ts";
import { playersAt } from "./playerNames.ts";
import type { LiveQuestion, NamedPlayer, ReadingContext } from "./reading.ts";
import type { Word, Words } from "./wordsOf.ts";

const owedShape =
  /^(what (do|does|else do) (we|the truck) (still )?owe|whats (still )?owed|what is (still )?owed|owed|anything (still )?owed|what are we owing)( |$)/;
const shortShape =
  /^((what|whats|what is|what are) (are )?(we )?(short|low|missing)|short|(are )?we short|what do we need)( (of|on|for)( .{1,20})?| monday)?$/;
const nextShape = /^(whats|what is|what|whos|who is) (up )?next( up| please| on the bench)?$|^next$/;
const findShape = /^(anything |any |driver |drivers |heads? |which heads? )*(under|over|above|below) \d{1,2}(\.\d{1,2})?( |$)/;
const bounceShape = /\bwhat bounce\b|\bhow much bounce\b/;
const swingShape =
  /\bpoints?\b.*\bhow (much|many)\b|\b(how (much|many)|what) (more |extra )?(weight|lead|grams?|g)\b.*(\bpoints?\b|\b[a-g]\d)|^(lead|weight|grams) for .*\bpoints?\b/;
const matchShape =
  /^(can|could|is|does) (the |his |her |\w{1,20} )?(backup|trial|twin)( club| driver)? (go in|in|match|matches|the same|close|ready to go in)/;
const polite = new Set([
  "the",
  "his",
  "her",
  "is",
  "are",
  "please",
  "pls",
  "at",
  "now",
  "today",
  "currently",
  "right",
  "of",
  "order",
  "up",
  "we",
  "with",
  "on",
  "for",
  "yet",
  "a",
]);
const gamingWords = new Set(["gaming", "playing", "using", "bag", "spec", "specs", "in", "got", "has", "have", "what", "whats", "gamer"]);

/** What is left of a question once a player and a club are taken out. */
interface Subject {
  readonly player: NamedPlayer | null;
  readonly club: ClubName | null;
  readonly others: readonly string[];
}

function subjectOf(words: readonly Word[], start: number, context: ReadingContext): Subject {
  let player: NamedPlayer | null = null;
  let club: ClubName | null = null;
  const others: string[] = [];
  for (let at = start; at < words.length; ) {
    const named: ReturnType<typeof playersAt> = player === null ? playersAt(words, at, context.players) : null;
    const played: NamedPlayer | undefined = named?.players.length === 1 ? named.players[0] : undefined;
    const hit: ClubHit | null = named === null && club === null ? clubAt(words, at) : null;
    const text = words[at]?.text ?? "";
    if (named !== null && played !== undefined) {
      player = played;
      at = named.next;
    } else if (hit?.kind === "clubs" && hit.clubs[0] !== undefined) {
      club = hit.clubs[0];
      at = hit.next;
    } else {
      if (!polite.has(text)) others.push(text);
      at += 1;
    }
  }
  return { player, club, others };
}

const whereWords = new Set(["where", "wheres", "where's", "status", "eta"]);

const progressOpeners = new Set(["is", "when", "whens", "how", "hows"]);
const progressWords = new Set(["ready", "done", "finished", "coming", "along", "be", "will", "going", "far", "soon"]);

/** `is toll's driver ready?`, `hows brams 3 wood coming along`. */
function progressOf(words: readonly Word[], context: ReadingContext): LiveQuestion | null {
  if (!progressOpeners.has((words[0]?.text ?? "").replace(/'/g, ""))) return null;
  const { player, club, others } = subjectOf(words, 1, context);
  const isAboutProgress = others.length > 0 && others.every((word) => progressWords.has(word));
  return player !== null && club !== null && isAboutProgress ? { ask: "where", player: player.id, club } : null;
}

function whereOf(words: readonly Word[], context: ReadingContext): LiveQuestion | null {
  if (!whereWords.has(words[0]?.text ?? "")) return null;
  const { player, club, others } = subjectOf(words, 1, context);
  return player !== null && others.length === 0 ? { ask: "where", player: player.id, club } : null;
}

function gamingOf(words: readonly Word[], plain: string, context: ReadingContext): LiveQuestion | null {
  const asks = /^(what|whats|spec|specs) /.test(`${plain} `);
  const endsInSpec = /(^| )specs?$/.test(plain);
  if (!asks && !endsInSpec) return null;
  const { player, club, others } = subjectOf(words, asks ? 1 : 0, context);
  if (player === null || others.some((word) => !gamingWords.has(word))) return null;
  const bare = /^(what|whats) /.test(plain) && others.length === 0 && club === null;
  return bare ? null : { ask: "gaming", player: player.id, club };
}

/** `a driver for bram now, by 2:30?`: a club, a time and a question mark, and nothing that builds. */
function asksReady(words: readonly Word[], asks: boolean, context: ReadingContext): boolean {
  if (!asks) return false;
  const timed = words.some(({ text }) => text === "by" || text === "now" || text === "before");
  const { club, player } = subjectOf(words, 0, context);
  const first = words[0]?.text ?? "";
  const opens =
    ["a", "an", "can", "could", "how", "when", "is", "any", "one", "new"].includes(first) ||
    playersAt(words, 0, context.players) !== null ||
    clubAt(words, 0) !== null;
  return timed && opens && club !== null && player !== null;
}

/** The question a message is, in the forms people ask; null when it is none. */
export function readQuestion({ words, asks }: Words, context: ReadingContext): LiveQuestion | null {
  if (words.length === 0 || words.length > 16) return null;
  const plain = words.map((word) => word.text.replace(/'/g, "")).join(" ");
  if (owedShape.test(plain) && words.length <= 10) return { ask: "owed" };
  if (shortShape.test(plain)) return plain === "short" && !asks ? null : { ask: "short" };
  if (nextShape.test(plain)) return plain === "next" && !asks ? null : { ask: "next" };
  const live = whereOf(words, context) ?? progressOf(words, context) ?? gamingOf(words, plain, context);
  if (live !== null) return live;
  if (bounceShape.test(plain) && /\d/.test(plain)) return { ask: "calc", view: "bend" };
  if (swingShape.test(plain)) return { ask: "calc", view: "swing" };
  if (findShape.test(plain) && asks) return { ask: "not-yet", topic: "find" };
  if (matchShape.test(plain)) return { ask: "not-yet", topic: "match" };
  return asksReady(words, asks, context) ? { ask: "not-yet", topic: "ready" } : null;
}
