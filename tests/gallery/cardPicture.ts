import type { Card, Form, Line, Span } from "../../bot/chat/types.ts";
import { clockText } from "../../bot/rehearsal/clockText.ts";
import { type Piece, paragraph } from "./paragraph.ts";
import { type Box, box, drawPicture } from "./picture.ts";
import type { Shown } from "./playedCards.ts";

/** What a phone of ordinary size shows across. */
const WIDTH = 390;
const MARGIN = 10;
const STRIPE = 5;
const PADDING = 10;
const TEXT_WIDTH = WIDTH - 2 * MARGIN - STRIPE - 2 * PADDING;
const ink = "#1b1f24";
const faint = "#68707a";
const stripes: Readonly<Record<Card["tone"], string>> = { plain: "#9aa3ad", good: "#2f855a", attention: "#b7791f", refusal: "#b83232" };
const weights = { main: ink, plain: faint, grave: stripes.refusal } as const;

function pieceOf(span: Span, { at, zone }: Shown): Piece {
  if (typeof span === "string") return { text: span, bold: false };
  if ("strong" in span) return { text: span.strong, bold: true };
  if ("call" in span) return { text: `@${span.name}`, bold: true };
  const own = span.zone === zone ? "" : ` (${clockText(span.at, span.zone, at)} ${span.zone})`;
  return { text: `${clockText(span.at, zone, at)}${own}`, bold: true };
}

const plain = (text: string, fontSize: number, color = ink): Box => paragraph([{ text, bold: false }], fontSize, color);
const strong = (text: string, fontSize: number): Box => paragraph([{ text, bold: true }], fontSize, ink);
const rule = box({ height: 1, backgroundColor: "#d5d9de", marginTop: 8, marginBottom: 6 });

const pill = (label: string, color: string): Box =>
  box(
    { border: `1.5px solid ${color}`, borderRadius: 14, padding: "3px 12px", margin: "6px 6px 0 0", fontSize: 13, color, maxWidth: TEXT_WIDTH - 28 },
    label,
  );

const listItem = (label: string): Box =>
  box(
    {
      border: "1px solid #d5d9de",
      borderRadius: 4,
      padding: "3px 8px",
      marginTop: 3,
      minHeight: 20,
      flexDirection: "column",
      justifyContent: "center",
    },
    [plain(label, 13)],
  );

function cardBoxes(card: Card, shown: Shown): readonly Box[] {
  const lineOf = (line: Line): Box =>
    paragraph(
      line.map((span) => pieceOf(span, shown)),
      14,
      ink,
    );
  const fields = card.fields.map(({ label, value }) =>
    paragraph([{ text: `${label}: `, bold: true }, ...value.map((span) => pieceOf(span, shown))], 13, ink),
  );
  return [
    strong(card.title, 16),
    ...card.lines.map(lineOf),
    ...(fields.length === 0 ? [] : [rule, plain("More", 11, faint), ...fields]),
    ...(card.choices === null ? [] : [rule, plain(card.choices.label, 13, faint), ...card.choices.items.map(({ label }) => listItem(label))]),
    ...(card.buttons.length === 0
      ? []
      : [
          box(
            { flexWrap: "wrap", width: "100%" },
            card.buttons.map(({ label, weight }) => pill(label, weights[weight])),
          ),
        ]),
    ...shown.files.map(({ name, bytes }) => listItem(`${name} · ${Math.max(1, Math.round(bytes / 1000))} kB`)),
  ];
}

const formBoxes = (form: Form): readonly Box[] => [
  strong(form.title, 16),
  ...form.parts.flatMap(({ label, required, value, items }) => [
    plain(`${label}${required ? "" : " (may stay empty)"}`, 12, faint),
    listItem(value === "" ? (items.length === 0 ? " " : items.map((item) => item.label).join(" / ")) : value),
  ]),
];

/** What somebody saw, as a message of a chat on a phone. */
export function cardPicture(shown: Shown): Promise<Uint8Array> {
  const { content, channel, to, at, zone } = shown;
  const isCard = "kind" in content;
  const head = [`#${channel}`, clockText(at, zone, at), ...(to === null ? [] : [`only ${to} sees it`])].join(" · ");
  const body = isCard ? cardBoxes(content, shown) : formBoxes(content);
  const stripe = box({ width: STRIPE, backgroundColor: isCard ? stripes[content.tone] : ink });
  const message = box({ flexDirection: "column", width: TEXT_WIDTH, padding: PADDING }, body);
  return drawPicture([plain(head, 11, faint), box({ marginTop: 4, backgroundColor: "#ffffff" }, [stripe, message])], {
    marginPx: MARGIN,
    width: WIDTH,
    background: "#eceef1",
  });
}
