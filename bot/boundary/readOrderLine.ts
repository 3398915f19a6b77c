import { clubAt } from "./clubAt.ts";
import { type Message, withoutGo } from "./message.ts";
import { newNotepad, wordAt } from "./notepad.ts";
import type { MessageReading, ReadingContext } from "./reading.ts";
import { readMeasured } from "./readMeasured.ts";
import { readWords } from "./readWords.ts";
import { clausesOf, mendingsOf, problemsOf } from "./settle.ts";
import type { Word } from "./wordsOf.ts";

type Verb = "hold" | "scratch" | "where" | "resume" | "measured" | "pause" | "expect";
const verbs: Readonly<Record<string, Verb>> = {
  hold: "hold",
  scratch: "scratch",
  scrap: "scratch",
  cancel: "scratch",
  drop: "scratch",
  where: "where",
  wheres: "where",
  "where's": "where",
  status: "where",
  eta: "where",
  resume: "resume",
  unhold: "resume",
  pause: "pause",
  comes: "expect",
  coming: "expect",
  expected: "expect",
  expect: "expect",
  measured: "measured",
  measure: "measured",
  meas: "measured",
  msrd: "measured",
};
const LARGEST_NUMBER = 9_999_999;
const verbOf = (word: string): Verb | null => (Object.hasOwn(verbs, word) ? (verbs[word] ?? null) : null);

function numberOf(words: readonly Word[], at: number): { readonly number: number; readonly next: number } | null {
  const start = words[at]?.text === "order" ? at + 1 : at;
  const text = words[start]?.text ?? "";
  const number = /^\d{1,7}$/.test(text) ? Number(text) : 0;
  return number > 0 && number <= LARGEST_NUMBER ? { number, next: start + 1 } : null;
}

/** `hold 57 …`, `scratch 57 …`, `where is 57`, `resume 57`, `measured 57 …`, or the number first. */
export function readVerbLine(message: Message, context: ReadingContext): MessageReading | null {
  const { words } = message;
  const verb = verbOf(words[0]?.text ?? "");
  if (verb !== null) {
    let start = 1;
    while (start < 3 && ["is", "the", "s"].includes(words[start]?.text ?? "")) start += 1;
    const hit = numberOf(words, start);
    if (hit === null || (hit.next < words.length && clubAt(words, start) !== null)) return null;
    return verbReading(message, context, verb, hit);
  }
  const led = numberOf(words, 0);
  const later = led === null ? null : verbOf(words[led.next]?.text ?? "");
  if (led === null || later === null || !context.isOpenOrder(led.number)) return null;
  return verbReading(message, context, later, { number: led.number, next: led.next + 1 });
}

function verbReading(
  message: Message,
  context: ReadingContext,
  verb: Verb,
  hit: { readonly number: number; readonly next: number },
): MessageReading | null {
  const { number } = hit;
  const bare = hit.next >= message.words.length;
  if (verb === "measured") return context.isOpenOrder(number) || !bare ? readMeasured(message, context, hit) : null;
  if (!bare && !context.isOpenOrder(number)) return null;
  if (verb === "where") return bare || message.words.length - hit.next <= 2 ? { kind: "where", number, reason: null } : null;
  if (verb === "expect" && bare) return null;
  const from = message.words[hit.next]?.from;
  const reason = from === undefined ? null : message.text.slice(from).trim().slice(0, 500);
  return { kind: verb, number, reason: reason === "" ? null : reason };
}

/** `57 make it d4`: counts only when that order is open here and every word reads; a value out of range is asked. */
export function readRevision(message: Message, context: ReadingContext): MessageReading | null {
  const hit = numberOf(message.words, 0);
  if (hit === null || !context.isOpenOrder(hit.number) || clubAt(message.words, 0)?.kind === "clubs" || message.asks) return null;
  const pad = newNotepad(message.text, withoutGo(message.words).words, context, { mode: "revise", kind: null, kindAt: null });
  pad.last = "clause";
  readWords(pad, hit.next);
  const written =
    pad.wishes.size > 0 || pad.like !== null || pad.by !== null || pad.to !== null || pad.note !== null || pad.urgent || pad.problems.length > 0;
  const strangers = pad.unread.length > 0 || pad.remarks.length > 0 || pad.player !== null || pad.clubs.length > 0 || pad.clubAsked;
  if (!written || strangers || wordAt(pad, hit.next) === "") return null;
  if (pad.problems.length > 0) return problemsOf(pad, null);
  return {
    kind: "revise",
    number: hit.number,
    clauses: clausesOf(pad),
    like: pad.like,
    by: pad.by,
    to: pad.to,
    urgent: pad.urgent,
    note: pad.note,
    mendings: mendingsOf(pad),
  };
}
