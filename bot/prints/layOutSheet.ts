import { manyClubs } from "./manyClubs.ts";
import { oneClub } from "./oneClub.ts";
import { type Density, entriesOf, lineHeight, type Pen, type Placed, rule, write, writeLeft } from "./pen.ts";
import type { SheetPrint } from "./sheetPrint.ts";
import type { Typeface } from "./typeface.ts";

/** A4; everything stands where a US Letter page has room too, laid in the middle of it or at its top. */
export const page = { width: 595, height: 842, left: 38, right: 557, top: 44, bottom: 772 } as const;

const WIDTH = page.right - page.left;
const TITLE_PT = 19;
const HAND_PT = 13;
const ADVICE_PT = 8;
const FOOT = 2 * lineHeight(ADVICE_PT) + 6;

/** From large and whole down to small and shortened. */
const densities: readonly Density[] = [
  ...[1.25, 1.18, 1.1, 1.03, 0.96, 0.9, 0.84, 0.78, 0.72, 0.69, 0.66].map((scale) => ({ scale, maxLines: 3, maxEntries: 60 })),
  ...[0.78, 0.72, 0.66].map((scale) => ({ scale, maxLines: 2, maxEntries: 30 })),
  ...[20, 14, 10, 7, 5, 4].map((maxEntries) => ({ scale: 0.66, maxLines: 1, maxEntries })),
];

function head(pen: Pen, { title, subtitle, hand, due }: SheetPrint): number {
  const { face, scale } = pen;
  const dueWidth = due === null ? 0 : Math.min(face.widthOf(due, TITLE_PT, true), WIDTH * 0.4);
  if (due !== null) {
    write(pen, due, { x: page.right - dueWidth, y: page.top, width: dueWidth + 0.01, sizePt: TITLE_PT, bold: true, right: true, maxLines: 1 });
  }
  const below = write(pen, title, { x: page.left, y: page.top, width: WIDTH - dueWidth - 14, sizePt: TITLE_PT, bold: true, maxLines: 1 });
  const y = Math.max(below, page.top + lineHeight(TITLE_PT));
  const handWidth = Math.min(face.widthOf(hand, HAND_PT, true), WIDTH * 0.3);
  write(pen, hand, { x: page.right - handWidth, y, width: handWidth + 0.01, sizePt: HAND_PT, bold: true, right: true, maxLines: 1 });
  const lines = write(pen, subtitle, { x: page.left, y, width: WIDTH - handWidth - 14, sizePt: Math.min(9, 9 * scale), maxLines: 2 });
  const end = Math.max(lines, y + lineHeight(HAND_PT)) + 2;
  rule(pen, page.left, end, WIDTH, 1.5);
  return end + 7;
}

function firstLines(pen: Pen, first: readonly string[], y: number): number {
  const { set, left } = entriesOf(pen, first);
  const place = { x: page.left, width: WIDTH, sizePt: 10.5 * pen.scale, bold: true };
  const below = set.reduce((top, text) => write(pen, text, { ...place, y: top }), y);
  return writeLeft(pen, left, { ...place, y: below }) + (first.length === 0 ? 0 : 5 * pen.scale);
}

function noteLines(pen: Pen, { notes, headings }: SheetPrint, y: number): number {
  if (notes.length === 0) {
    return y;
  }
  const { scale } = pen;
  const { set, left } = entriesOf(pen, notes);
  const place = { x: page.left, width: WIDTH, sizePt: 9.5 * scale };
  rule(pen, page.left, y + 2 * scale, WIDTH);
  const top = write(pen, headings.notes, { ...place, y: y + 5 * scale, sizePt: 9 * scale, bold: true, maxLines: 1 });
  const below = set.reduce(
    (next, { label, value }) => write(pen, label === "" ? value : `${label}: ${value}`, { ...place, y: next, maxLines: pen.maxLines * 3 }),
    top,
  );
  return writeLeft(pen, left, { ...place, y: below });
}

function foot(pen: Pen, advice: string): void {
  rule(pen, page.left, page.bottom - FOOT, WIDTH);
  write(pen, advice, { x: page.left, y: page.bottom - FOOT + 4, width: WIDTH, sizePt: ADVICE_PT, maxLines: 2 });
}

interface SetPage {
  readonly placed: readonly Placed[];
  readonly below: number;
  /** Nothing of the work itself is shortened or left out. */
  readonly isWhole: boolean;
}

const isShortened = (one: Placed): boolean => one.kind === "text" && /…$|^… \+/.test(one.text);

function setPage(print: SheetPrint, face: Typeface, density: Density): SetPage {
  const pen: Pen = { ...density, face, placed: [] };
  const headed = head(pen, print);
  const from = pen.placed.length;
  const top = firstLines(pen, print.first, headed);
  const place = { x: page.left, y: top, width: WIDTH };
  const [only, ...others] = print.clubs;
  const clubs = only !== undefined && others.length === 0 ? oneClub(pen, print, only, place) : manyClubs(pen, print, place);
  const isWhole = !pen.placed.slice(from).some(isShortened);
  const below = noteLines(pen, print, clubs);
  foot(pen, print.advice);
  return { placed: pen.placed, below, isWhole };
}

/** Every text of a print in letters that the font has. */
function inPrintableLetters<T>(value: T, printable: (text: string) => string): T {
  const change = (part: unknown): unknown => {
    if (typeof part === "string") return printable(part);
    if (Array.isArray(part)) return part.map(change);
    return typeof part === "object" && part !== null ? Object.fromEntries(Object.entries(part).map(([name, inner]) => [name, change(inner)])) : part;
  };
  return change(value) as T;
}

/** Where everything of a sheet stands on its one page: as large as it stands there whole, else as large as it fits, shortened and counted. */
export function layOutSheet(print: SheetPrint, face: Typeface): readonly Placed[] {
  const printable = inPrintableLetters(print, face.printable);
  let largest: readonly Placed[] | null = null;
  for (const density of densities) {
    const { placed, below, isWhole } = setPage(printable, face, density);
    const fits = below <= page.bottom - FOOT - 2;
    if (fits && isWhole) {
      return placed;
    }
    largest ??= fits ? placed : null;
  }
  if (largest === null) {
    throw new Error(`a sheet of ${print.clubs.length} clubs does not fit its page`);
  }
  return largest;
}
