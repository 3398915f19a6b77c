import type { OrderKind } from "../../core/kinds.ts";
import { type Message, withoutGo } from "./message.ts";
import { ask, mend, type Notepad, newNotepad, placeOf, wordAt } from "./notepad.ts";
import { readFreeOrder } from "./readFreeOrder.ts";
import type { MessageReading, ReadingContext } from "./reading.ts";
import { takeRestOfLine } from "./readRestOfLine.ts";
import { readWords } from "./readWords.ts";
import { settle } from "./settle.ts";
import { readClub, readPlayer } from "./whoAndWhat.ts";

/** Kinds of work described in words of one's own. */
const described: ReadonlySet<OrderKind> = new Set<OrderKind>(["repair", "broke", "grind"]);

/** Reads a message whose kind of work was named; its words start at `start`. */
export function readKindOrder(
  message: Message,
  context: ReadingContext,
  kind: { readonly kind: OrderKind; readonly misspelt: boolean; readonly at: number; readonly start: number },
): MessageReading {
  const { words, goFrom } = withoutGo(message.words);
  const isLed = kind.start > kind.at;
  const readable = isLed ? words : words.filter((_, at) => at !== kind.at);
  const pad = newNotepad(message.text, readable, context, { mode: "order", kind: kind.kind, kindAt: isLed ? kind.at : null });
  if (kind.misspelt) mend(pad, kind.at, kind.at + 1, kind.kind, "misspelt");
  if (kind.kind === "stamp") readStampOrder(pad, kind.start);
  else if (described.has(kind.kind)) readFreeOrder(pad, kind.start);
  else readWords(pad, kind.start);
  return settle(pad, kind.kind, goFrom);
}

/** In capitals it is what is to be stamped: `THE KING`. */
function isTyped(pad: Notepad, at: number): boolean {
  const word = pad.words[at];
  const text = word === undefined ? "" : pad.text.slice(word.from, word.to);
  return text !== text.toLowerCase();
}

/** `stamp oxtoby sw BO 27`: after player and club the rest of the line is the text. */
function readStampOrder(pad: Notepad, start: number): void {
  let at = start;
  const skipped = new Set(["the", "a", "his", "her", "for", "on", "stamp", "please", "pls"]);
  for (let read = 0; read < 6 && at < pad.end; read += 1) {
    const gap = pad.words[at]?.gap;
    if (read > 0 && gap === "line") break;
    const isNextClub = pad.clubs.length === 0 || (pad.last === "club" && gap === "comma");
    const next = Math.max(pad.player === null ? readPlayer(pad, at) : at, isNextClub ? readClub(pad, at) : at);
    if (next > at) at = next;
    else if (skipped.has(wordAt(pad, at)) && !isTyped(pad, at)) at += 1;
    else break;
  }
  const hasText = at < pad.end && pad.words[at]?.gap !== "line";
  if (hasText) at = takeRestOfLine(pad, "stamp", start, at);
  readWords(pad, at);
  if (!pad.wishes.has("stamp")) ask(pad, "nothing-to-do", placeOf(pad, start - 1, pad.end), "the text to stamp");
}
