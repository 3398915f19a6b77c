import type { OrderKind } from "../../core/kinds.ts";
import { clubAt, wedgeOfLoft } from "./clubAt.ts";
import type { Message } from "./message.ts";
import { playerNear, playersAt } from "./playerNames.ts";
import type { MessageReading, ReadingContext } from "./reading.ts";
import { readKindless } from "./readKindless.ts";
import { readKindOrder } from "./readKindOrder.ts";
import { readRevision, readVerbLine } from "./readOrderLine.ts";
import { readQuestion } from "./readQuestion.ts";
import { isClauseWord, isFiller, kindOfWord } from "./vocabulary.ts";
import { type Word, wordsOf } from "./wordsOf.ts";

const LONGEST_MESSAGE = 2_000;
const MOST_ARTICLES = 5;
const openers = new Set("please pls plz hey hi ok and can could you we need to just new order guys".split(" "));
const articles = new Set(
  "a an the his her me us my our new another please pls up of all full whole entire lost bag set 14 clubs everything".split(" "),
);

/** Kinds whose player may follow `for` with the club left out: `build for toll`, `check bag for toll`. */
const bringsFor: ReadonlySet<OrderKind> = new Set<OrderKind>(["build", "check"]);

const breaks = new Set(["broke", "broken", "snapped", "cracked"]);

interface NamedKind {
  readonly kind: OrderKind;
  readonly misspelt: boolean;
  readonly at: number;
  readonly start: number;
}

/** A kind of work counts only when a player, a club or (with a club behind it) an unknown name comes next. */
function kindAt(words: readonly Word[], context: ReadingContext): NamedKind | null {
  let at = 0;
  while (at < 4 && openers.has(words[at]?.text ?? "")) at += 1;
  const named = brokeAfterPlayer(words, at, context) ?? bagCheckAt(words, at, context);
  if (named !== null) return named;
  const kind = kindOfWord(words[at]?.text ?? "");
  if (kind === null) return null;
  let next = at + 1;
  while (next <= at + MOST_ARTICLES && (articles.has(words[next]?.text ?? "") || (bringsFor.has(kind.kind) && words[next]?.text === "for")))
    next += 1;
  if (!countsBefore(words, next, kind, context)) return null;
  return { ...kind, at, start: at + 1 };
}

function countsBefore(
  words: readonly Word[],
  next: number,
  kind: { readonly kind: OrderKind; readonly misspelt: boolean },
  context: ReadingContext,
): boolean {
  const text = words[next]?.text ?? "";
  if (playersAt(words, next, context.players) !== null) return true;
  if (kind.misspelt) return playerNear(text, context.players, context.steps).kind !== "none" && clubAt(words, next + 1) !== null;
  const counted = /^(\d{1,2}x?|two|three|four|pair)$/.test(text) ? next + (words[next + 1]?.text === "of" ? 2 : 1) : next;
  if (clubAt(words, next) !== null || (counted > next && clubAt(words, counted) !== null)) return true;
  if (wedgeOfLoft(Number(text)) !== null && playersAt(words, next + 1, context.players) !== null) return true;
  if (text === "" || isFiller(text) || isClauseWord(text) || !/^\p{L}/u.test(text)) return false;
  if (playerNear(text, context.players, context.steps).kind !== "none") return true;
  if (kind.kind === "check") return false;
  return clubAt(words, next + 1) !== null || clubAt(words, next + 2) !== null;
}

/** `toll broke his driver`, `tolls driver snapped`. */
function brokeAfterPlayer(words: readonly Word[], at: number, context: ReadingContext): NamedKind | null {
  const player = playersAt(words, at, context.players);
  if (player === null) return null;
  const named = clubAt(words, player.next);
  const broken = named?.kind === "clubs" ? named.next : player.next;
  if (broken > player.next && breaks.has(words[broken]?.text ?? "")) return { kind: "broke", misspelt: false, at: broken, start: at };
  const verb = ["has", "just", "have"].reduce((next, aside) => (words[next]?.text === aside ? next + 1 : next), player.next);
  if (!breaks.has(words[verb]?.text ?? "")) return null;
  const club = ["his", "her", "the"].includes(words[verb + 1]?.text ?? "") ? verb + 2 : verb + 1;
  if (clubAt(words, club)?.kind !== "clubs") return null;
  return { kind: "broke", misspelt: false, at: verb, start: at };
}

/** `bag check toll`, `toll bag check by 3`. */
function bagCheckAt(words: readonly Word[], at: number, context: ReadingContext): NamedKind | null {
  const checkFrom = (bag: number): number | null => {
    if (words[bag]?.text === "bagcheck") return bag;
    return words[bag]?.text === "bag" && words[bag + 1]?.text === "check" ? bag + 1 : null;
  };
  const led = checkFrom(at);
  if (led !== null) {
    const name = ["for", "on", "of"].includes(words[led + 1]?.text ?? "") ? led + 2 : led + 1;
    return playersAt(words, name, context.players) === null ? null : { kind: "check", misspelt: false, at: led, start: led + 1 };
  }
  const player = playersAt(words, at, context.players);
  const check = player === null ? null : checkFrom(player.next);
  const behind = check === null ? "" : (words[check + 1]?.text ?? "");
  const isOrder = behind === "" || isFiller(behind) || isClauseWord(behind) || ["asap", "he", "she", "caddie"].includes(behind);
  return check !== null && isOrder ? { kind: "check", misspelt: false, at: check, start: at } : null;
}

function tooLong(text: string, context: ReadingContext): MessageReading {
  const { words } = wordsOf(text.slice(0, 200), context.steps);
  const kind = kindAt(words, context);
  if (kind === null) return { kind: "silence" };
  const place = { from: LONGEST_MESSAGE, to: text.length };
  const problem = {
    code: "too-long",
    place,
    word: text.slice(LONGEST_MESSAGE, LONGEST_MESSAGE + 20),
    accepted: `up to ${LONGEST_MESSAGE} characters`,
    options: [],
  } as const;
  return { kind: "problems", problems: [problem], mendings: [], orderKind: kind.kind };
}

/**
 * Reads a message of an order channel: an order, a question, a line about an order, every fault at once, or silence.
 * One pass over the characters, a bounded number of looks at each word; never throws.
 */
export function readMessage(text: string, context: ReadingContext): MessageReading {
  if (text.length > LONGEST_MESSAGE) return tooLong(text, context);
  const message: Message = { text, ...wordsOf(text, context.steps) };
  if (message.words.length === 0) return { kind: "silence" };
  const question = readQuestion(message, context);
  if (question !== null) return { kind: "question", question };
  const line = readVerbLine(message, context) ?? readRevision(message, context);
  if (line !== null) return line;
  const kind = kindAt(message.words, context);
  if (kind !== null) return readKindOrder(message, context, kind);
  return readKindless(message, context);
}
