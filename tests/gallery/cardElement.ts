import type { Card, Line, Span } from "../../bot/chat/types.ts";
import { formatInTimeZone } from "../../bot/replies/zonedTime.ts";

/** An element as satori takes it, without JSX. */
export interface Element {
  readonly type: "div";
  readonly props: { readonly style: Readonly<Record<string, string | number>>; readonly children?: string | readonly Element[] };
}

/** A card as a rehearsal prints it: its files are kept already. */
export type PlayedCard = Omit<Card, "files"> & {
  readonly files: readonly { readonly name: string; readonly bytes: number; readonly path: string }[];
};

const INK = "#1f2328";
const FAINT = "#6b7280";
/** Of the size of the letters. */
const SPACE = 0.32;
const stripes: Readonly<Record<Card["tone"], string>> = { plain: "#9ca3af", good: "#2f855a", attention: "#b7791f", refusal: "#b83232" };
const borders: Readonly<Record<"main" | "plain" | "grave", string>> = {
  main: `2px solid ${INK}`,
  plain: `1px solid ${FAINT}`,
  grave: "1px solid #b83232",
};

const box = (style: Element["props"]["style"], children: string | readonly Element[]): Element => ({
  type: "div",
  props: { style: { display: "flex", ...style }, children },
});
const column = (gap: number, children: readonly Element[]): Element => box({ flexDirection: "column", width: "100%", gap }, children);

function spanText(span: Span): { readonly text: string; readonly strong: boolean } {
  if (typeof span === "string") return { text: span, strong: false };
  if ("strong" in span) return { text: span.strong, strong: true };
  return "call" in span ? { text: `@${span.name}`, strong: true } : { text: formatInTimeZone(span.at, span.zone, "HH:mm"), strong: false };
}

/** Words one by one, so that bold and plain wrap together; a word wider than the card is broken. */
function words(line: Line, sizePx: number, width: "100%" | "auto" = "100%"): Element {
  const pieces = line
    .map(spanText)
    .flatMap(({ text, strong }) => [...text.matchAll(/(\S*)(\s*)/g)].map(([, word = "", space = ""]) => ({ word, space, strong })));
  const drawn = pieces
    .filter(({ word, space }) => word + space !== "")
    .map(({ word, space, strong }) =>
      box({ wordBreak: "break-all", maxWidth: "100%", fontWeight: strong ? 700 : 400, paddingRight: space === "" ? 0 : sizePx * SPACE }, word),
    );
  return box({ flexWrap: "wrap", width, maxWidth: "100%", fontSize: sizePx, lineHeight: 1.35, color: INK }, drawn);
}

const faint = (text: string): Element => words([text], 11);

const fields = (card: PlayedCard): readonly Element[] =>
  card.fields.length === 0
    ? []
    : [
        box({ height: 1, backgroundColor: "#d1d5db" }, []),
        column(
          3,
          card.fields.map(({ label, value }) => words([{ strong: `${label}: ` }, ...value], 12)),
        ),
      ];

const choices = (card: PlayedCard): readonly Element[] =>
  card.choices === null
    ? []
    : [
        column(2, [
          words([{ strong: card.choices.label }], 13),
          ...card.choices.items.map(({ label }) => box({ paddingLeft: 10 }, [words([`○ ${label}`], 13)])),
        ]),
      ];

const buttons = (card: PlayedCard): readonly Element[] =>
  card.buttons.length === 0
    ? []
    : [
        box(
          { flexWrap: "wrap", gap: 6 },
          card.buttons.map(({ label, weight }) =>
            box({ border: borders[weight], borderRadius: 14, padding: "3px 11px", maxWidth: "100%" }, [words([label], 13, "auto")]),
          ),
        ),
      ];

const files = (card: PlayedCard): readonly Element[] =>
  card.files.map(({ name, bytes }) =>
    box({ border: `1px solid ${FAINT}`, padding: "4px 8px" }, [words([{ strong: name }, ` ${Math.max(1, Math.round(bytes / 1000))} kB`], 12)]),
  );

/** A card as a message of a chat that is nobody's: title, lines, what stands behind More, choices, buttons, files. */
export function cardElement(card: PlayedCard, place: string): Element {
  const body = column(7, [
    faint(place),
    words([{ strong: card.title }], 15),
    ...(card.lines.length === 0
      ? []
      : [
          column(
            3,
            card.lines.map((line) => words(line, 13.5)),
          ),
        ]),
    ...fields(card),
    ...choices(card),
    ...buttons(card),
    ...files(card),
  ]);
  return box({ width: 390, backgroundColor: "#ffffff", padding: 10, fontFamily: "DejaVu Sans" }, [
    box({ width: 4, backgroundColor: stripes[card.tone], borderRadius: 2, flexShrink: 0 }, []),
    box({ flexDirection: "column", width: 350, paddingLeft: 10 }, [body]),
  ]);
}
