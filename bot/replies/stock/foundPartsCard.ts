import type { PartQuestion, Unread } from "../../boundary/stock/findQuestion.ts";
import { shownName } from "../../boundary/stock/stockKnown.ts";
import type { Card, Line } from "../../chat/types.ts";
import type { FoundPart, FoundParts, FoundPiece } from "../../operations/findStockParts.ts";
import { card, line } from "../card.ts";
import { shown } from "../shown.ts";
import { unreadLines } from "./unreadLines.ts";

const MOST_LINES = 15;
const MOST_NAMES = 5;

const where = ({ place, truck }: { readonly place: string; readonly truck: string | null }): string =>
  truck === null ? place : `${place}, truck ${truck}`;

const partLine = ({ name, count, heldCount, ...lying }: FoundPart): Line =>
  line(`${name}: `, { strong: String(count) }, ` in ${where(lying)}${heldCount > 0 ? `, ${heldCount} held for orders` : ""}`);

function pieceLine({ name, state, tipTrimMm, sleeve, logo, cutLengthMm, orderNumber, ...lying }: FoundPiece): Line {
  const words = [
    state,
    `tip ${tipTrimMm === 0 ? "untrimmed" : shown.both(tipTrimMm)}`,
    ...(sleeve === null ? [] : [sleeve]),
    ...(logo === null ? [] : [`logo ${logo}`]),
    cutLengthMm === null ? "butt uncut" : `cut to ${shown.both(cutLengthMm)}`,
    where(lying),
    ...(orderNumber === null ? [] : [`held by order ${orderNumber}`]),
  ];
  return line(`${name}, prepared: `, words.join(", "));
}

const listed = (names: readonly string[]): string =>
  names.length <= MOST_NAMES ? names.join(", ") : `${names.slice(0, MOST_NAMES).join(", ")} and ${names.length - MOST_NAMES} more`;

/** How many of what lie where, this truck first, prepared shafts behind. */
export function foundPartsCard({ models, place }: PartQuestion, { parts, pieces, missing, nearest }: FoundParts, unread: readonly Unread[]): Card {
  const rows = [...parts.map((part) => [part.here, partLine(part)] as const), ...pieces.map((piece) => [piece.here, pieceLine(piece)] as const)];
  const lines = [...rows.filter(([here]) => here), ...rows.filter(([here]) => !here)].map(([, shownLine]) => shownLine);
  const moreCount = Math.max(0, lines.length - MOST_LINES);
  const hereCount = parts.filter(({ here }) => here).reduce((total, { count }) => total + count, 0);
  const allCount = parts.reduce((total, { count }) => total + count, 0);
  const asked = `${listed(models.map(shownName))}${place === null ? "" : ` in ${place.shown}`}`;
  return card({
    kind: "stock.parts",
    title: lines.length === 0 ? `None on record: ${asked}` : `${asked}: ${hereCount} in this truck, ${allCount} in all`,
    tone: lines.length === 0 || unread.length > 0 ? "attention" : "plain",
    lines: [
      ...unreadLines(unread),
      ...lines.slice(0, MOST_LINES),
      ...(moreCount > 0 ? [line(`and ${moreCount} more`)] : []),
      ...(missing.length > 0 && lines.length > 0 && place === null ? [line(`None of: ${listed(missing)}`)] : []),
      ...(nearest.length > 0 ? [line(`Nearest that there are: ${nearest.join(", ")}`)] : []),
    ],
    data: {
      hereCount,
      allCount,
      moreCount,
      parts: parts.slice(0, MOST_LINES).map((part) => ({ ...part })),
      pieces: pieces.slice(0, MOST_LINES).map((piece) => ({ ...piece })),
    },
  });
}
