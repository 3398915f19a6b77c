import { asksStock } from "./asksStock.ts";
import { clubAt } from "./clubAt.ts";
import type { Message } from "./message.ts";
import { playersAt } from "./playerNames.ts";
import { subjectOf } from "./questionSubject.ts";
import type { LiveQuestion, ReadingContext } from "./reading.ts";
import { readMatchQuestion } from "./readMatchQuestion.ts";
import type { Word } from "./wordsOf.ts";

const owedShape =
  /^(what (do|does|else do) (we|the truck) (still )?owe|whats (still )?owed|what is (still )?owed|owed|anything (still )?owed|what are we owing)( |$)/;
const shortShape =
  /^((what|whats|what is|what are) (are )?(we )?(short|low|missing)|short|(are )?we short|what do we need)( (of|on|for)( .{1,20})?| monday)?$/;
const nextShape = /^(whats|what is|what|whos|who is) (up )?next( up| please| on the bench)?$|^next$/;
const bounceShape = /\bwhat bounce\b|\bhow much bounce\b/;
const swingShape =
  /\bpoints?\b.*\bhow (much|many)\b|\b(how (much|many)|what) (more |extra )?(weight|lead|grams?|g)\b.*(\bpoints?\b|\b[a-g]\d)|^(lead|weight|grams) for .*\bpoints?\b/;
const replenishShapes = [
  /^(what|whats|which) (do |does )?(the |our )?(players )?bins? (need|needs|are (short|low)|want)( |$)/,
  /^(what|whats|which bins?) (else )?(needs?|wants?) ((re)?(filling|plenishing|fill|stocking)|topping up|to be (refilled|replenished))( |$)/,
  /^(what|whats) .{0,30}\bowe .{0,20}\bbins?\b/,
  /^(what|anything) (do we need )?to (replenish|refill)( |$)/,
];
const gamingWords = new Set(["gaming", "playing", "using", "bag", "spec", "specs", "in", "got", "has", "have", "what", "whats", "gamer"]);
const whereWords = new Set(["where", "wheres", "where's", "status", "eta"]);

const progressOpeners = new Set(["is", "when", "whens", "how", "hows"]);
const progressWords = new Set(["ready", "done", "finished", "coming", "along", "be", "will", "going", "far", "soon", "backup"]);

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

/** `a driver for bram now, by 2:30?`: a club, a time and a question mark, and nothing that builds; as the order it would be. */
function readyOf(words: readonly Word[], asks: boolean, context: ReadingContext): LiveQuestion | null {
  if (!asks) return null;
  const timed = words.some(({ text }) => text === "by" || text === "now" || text === "before");
  const { club, player } = subjectOf(words, 0, context);
  const first = words[0]?.text ?? "";
  const opens =
    ["a", "an", "can", "could", "how", "when", "is", "any", "one", "new"].includes(first) ||
    playersAt(words, 0, context.players) !== null ||
    clubAt(words, 0) !== null;
  if (!timed || !opens || club === null || player === null) return null;
  const by = words.findIndex(({ text }) => text === "by" || text === "before");
  const when =
    by < 0
      ? "now"
      : words
          .slice(by)
          .map(({ text }) => text)
          .join(" ");
  return { ask: "ready", text: `${player.name} ${club} ${when}` };
}

/** The question a message is, in the forms people ask; null when it is none. */
export function readQuestion(message: Message, context: ReadingContext): LiveQuestion | null {
  const { words, asks } = message;
  if (words.length === 0 || words.length > 16) return null;
  const plain = words.map((word) => word.text.replace(/'/g, "")).join(" ");
  if (replenishShapes.some((shape) => shape.test(plain)) || (/^(replenish|refills?)$/.test(plain) && asks)) return { ask: "replenish" };
  if (owedShape.test(plain) && words.length <= 10) return { ask: "owed" };
  if (shortShape.test(plain)) return plain === "short" && !asks ? null : { ask: "short" };
  if (nextShape.test(plain)) return plain === "next" && !asks ? null : { ask: "next" };
  const live = whereOf(words, context) ?? progressOf(words, context) ?? gamingOf(words, plain, context);
  if (live !== null) return live;
  if (bounceShape.test(plain) && /\d/.test(plain)) return { ask: "calc", view: "bend" };
  if (swingShape.test(plain)) return { ask: "calc", view: "swing" };
  const match = readMatchQuestion(words, asks, context);
  if (match !== null) return match;
  if (asksStock(message, context)) return { ask: "find", text: message.text.trim() };
  return readyOf(words, asks, context);
}
