import { clockText } from "../../bot/rehearsal/clockText.ts";
import { instant } from "../../core/kinds.ts";
import type { Piece } from "./paragraph.ts";
import type { Shown } from "./playedCards.ts";

interface MarkupLine {
  /** Subtext, smaller and fainter than other lines. */
  readonly small: boolean;
  readonly pieces: readonly Piece[];
}

/** An escaped sign, a moment, a mention, or a turn of the bold style. */
const token = /\\([^\sA-Za-z0-9])|<t:(\d+):t>|<@(&?\d+)>|(\*\*)/g;

/** The platform's markup as it is read there, as far as cards use it: bold, subtext, moments, mentions, escaped signs. */
export function chatMarkup(text: string, { at, zone }: Pick<Shown, "at" | "zone">): readonly MarkupLine[] {
  return text.split("\n").map((line) => {
    const small = line.startsWith("-# ");
    const pieces: Piece[] = [];
    const rest = small ? line.slice("-# ".length) : line;
    let [bold, end] = [false, 0];
    for (const match of rest.matchAll(token)) {
      const [whole, escaped, seconds, called, turn] = match;
      const read =
        escaped ?? (seconds === undefined ? (called === undefined ? "" : `@${called}`) : clockText(instant(Number(seconds) * 1000), zone, at));
      pieces.push({ text: rest.slice(end, match.index), bold }, { text: read, bold });
      bold = turn === undefined ? bold : !bold;
      end = match.index + whole.length;
    }
    return { small, pieces: [...pieces, { text: rest.slice(end), bold }].filter((piece) => piece.text !== "") };
  });
}
