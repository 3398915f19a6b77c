import type { Card, Line } from "../chat/types.ts";
import { lineText } from "../prints/lineText.ts";
import { roomOfLine } from "./drawLine.ts";
import { drawRows } from "./drawRows.ts";
import { cutText, escapeText } from "./escapeText.ts";
import { withOwnClock } from "./ownClock.ts";

export const TITLE_MAX = 256;
const LINES_MAX = 4096;
const NOTE_MAX = 200;
/** Cut to this, even a line of nothing but signs to escape fits. */
const LONG_LINE_MAX = 1900;
/** Ten to a message, one of them for what is left out. */
export const FILES_MAX = 9;
const SMALL = "-# ";

interface FittedCard {
  readonly lines: readonly Line[];
  /** What stands behind More: in small print below the lines. */
  readonly small: readonly Line[];
  /** The last line when the card is more than the platform takes; the whole of it goes along as a file. */
  readonly leftOut: string | null;
}

/** What of a card the platform has room for, whoever is behind its calls. */
export function fitCard(drawn: Card): FittedCard {
  const card = withOwnClock(drawn);
  const small = card.fields.map(({ label, value }): Line => [{ strong: label }, " ", ...value]);
  const roomOf = (line: Line, index: number): number => roomOfLine(line) + 1 + (index < card.lines.length ? 0 : SMALL.length);
  const rooms = [...card.lines, ...small].map(roomOf);
  const others = otherNotes(card);
  const files = counted((card.files ?? []).length - FILES_MAX, "file").map((some) => `${some} than the chat takes`);
  const isWhole = others.length === 0 && files.length === 0 && fitting(rooms, LINES_MAX) === rooms.length;
  if (isWhole) {
    return { lines: card.lines, small, leftOut: null };
  }
  const count = fitting(rooms, LINES_MAX - NOTE_MAX);
  const [first = []] = [...card.lines, ...small];
  const lines = count === 0 && rooms.length > 0 ? [[cutText(lineText(first), LONG_LINE_MAX)]] : card.lines.slice(0, count);
  const notes = [...counted(rooms.length - count, "line"), ...others];
  const leftOut = [...(notes.length === 0 ? [] : [`${notes.join(", ")} in the file`]), ...files].join("; ");
  return { lines, small: small.slice(0, Math.max(0, count - card.lines.length)), leftOut: `… ${leftOut}` };
}

/** How many of the first fit together. */
function fitting(rooms: readonly number[], most: number): number {
  let room = most;
  const over = rooms.findIndex((own) => {
    room -= own;
    return room < 0;
  });
  return over < 0 ? rooms.length : over;
}

function otherNotes(card: Card): readonly string[] {
  const parts = drawRows(card).flatMap((row) => row.components);
  const options = parts.flatMap((part) => ("options" in part ? part.options : []));
  const buttons = parts.filter((part) => !("options" in part));
  const actions = new Set(card.buttons.map(({ action }) => JSON.stringify([action.command, action.subject, action.version, action.argument])));
  const values = new Set((card.choices?.items ?? []).map(({ value }) => value));
  return [
    ...(escapeText(card.title).length > TITLE_MAX ? ["the whole title"] : []),
    ...counted(actions.size - buttons.length, "button"),
    ...counted(values.size - options.length, "choice"),
  ];
}

const counted = (count: number, what: string): readonly string[] => (count <= 0 ? [] : [`${count} more ${what}${count === 1 ? "" : "s"}`]);
