import { box, entriesOf, lineHeight, type Pen, rule, write, writeLeft } from "./pen.ts";
import type { PrintedClub, PrintedTarget, SheetPrint } from "./sheetPrint.ts";
import { stepRows } from "./stepRows.ts";

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

interface Column {
  readonly x: number;
  readonly width: number;
}

const GAP = 5;
const TARGETS_A_LINE = 4;

/** Shares a width out: a column that needs less than its share leaves the rest to the others. */
function sharedOut(needs: readonly number[], room: number): readonly number[] {
  const order = needs.map((need, index) => ({ need, index })).sort((a, b) => a.need - b.need);
  const widths = needs.map(() => 0);
  let left = room;
  for (const [rank, { need, index }] of order.entries()) {
    const width = Math.min(need, left / (order.length - rank));
    widths[index] = width;
    left -= width;
  }
  return widths;
}

function columnsOf({ face, scale }: Pen, { columns, clubs, headings }: SheetPrint, { x, width }: Place): readonly Column[] {
  const cells = [
    [headings.club, ...clubs.map(({ name }) => name)],
    ...columns.map((heading, at) => [heading, ...clubs.map(({ row }) => row[at] ?? "")]),
  ];
  const needs = cells.map((texts) => Math.max(...texts.map((text) => face.widthOf(text, 9.5 * scale, true))) + 1);
  const widths = sharedOut(needs, width - GAP * (cells.length - 1));
  return widths.map((own, index) => ({ x: x + widths.slice(0, index).reduce((sum, before) => sum + before + GAP, 0), width: own }));
}

/** What to measure of a club, side by side, with room to write behind each. */
function targetLines(pen: Pen, targets: readonly PrintedTarget[], { x, y, width }: Place): number {
  const { scale } = pen;
  const { set, left } = entriesOf(pen, targets);
  const pitch = width / TARGETS_A_LINE;
  const field = 34;
  const sizePt = Math.min(8, 8.5 * scale);
  const height = 13 * scale;
  for (const [index, { what, wanted, tolerance, measured }] of set.entries()) {
    const at = { x: x + (index % TARGETS_A_LINE) * pitch, y: y + Math.floor(index / TARGETS_A_LINE) * (height + 3 * scale) };
    write(pen, `${what} ${wanted} ${tolerance}`, { ...at, y: at.y + scale, width: pitch - field - 5, sizePt, maxLines: 1 });
    const frame = { x: at.x + pitch - field - 4, y: at.y, width: field, height };
    box(pen, frame, { linePt: 0.5 });
    if (measured !== null) {
      write(pen, measured, { x: frame.x + 2, y: at.y + scale, width: field - 4, sizePt, maxLines: 1 });
    }
  }
  const below = y + Math.ceil(set.length / TARGETS_A_LINE) * (height + 3 * scale);
  return writeLeft(pen, left, { x, y: below, width, sizePt });
}

function clubRow(pen: Pen, club: PrintedClub, columns: readonly Column[], { x, y, width }: Place): number {
  const { scale } = pen;
  const sizePt = 9.5 * scale;
  const bottoms = columns.map((column, index) =>
    write(pen, index === 0 ? club.name : (club.row[index - 1] ?? ""), { ...column, y, sizePt, bold: index < 2 }),
  );
  const cells = Math.max(y + lineHeight(sizePt), ...bottoms) + 1.5 * scale;
  const below = club.targets.length === 0 ? cells : targetLines(pen, club.targets, { x, y: cells, width });
  rule(pen, x, below + 0.5 * scale, width, 0.4);
  return below + 3 * scale;
}

/** A row for each club of a set, then the steps with a box for each of them. @returns the y below it */
export function manyClubs(pen: Pen, print: SheetPrint, { x, y, width }: Place): number {
  const { scale } = pen;
  const columns = columnsOf(pen, print, { x, y, width });
  const headings = [print.headings.club, ...print.columns];
  for (const [index, column] of columns.entries()) {
    write(pen, headings[index] ?? "", { ...column, y, sizePt: 8 * scale, maxLines: 1 });
  }
  let below = y + lineHeight(8 * scale) + scale;
  rule(pen, x, below, width, 0.8);
  below += 3 * scale;
  for (const club of print.clubs) {
    below = clubRow(pen, club, columns, { x, y: below, width });
  }
  return stepRows(pen, print, { x, y: below + 3 * scale, width });
}
