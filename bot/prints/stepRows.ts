import { box, entriesOf, lineHeight, type Pen, write, writeLeft } from "./pen.ts";
import type { PrintedStep, SheetPrint } from "./sheetPrint.ts";

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** From one column of boxes to the next: room for a club's name, and for fourteen of them beside the words. */
const pitchOf = (clubCount: number): number => Math.min(44, 336 / clubCount);

/** Where the boxes, the words and the minutes of every step stand: one club's box before the words, those of many behind. */
interface Columns {
  readonly ticksX: number;
  readonly pitch: number;
  readonly wordsX: number;
  readonly wordsWidth: number;
  readonly minutesWidth: number;
}

function columnsFor({ scale }: Pen, clubCount: number, { x, width }: Place): Columns {
  const minutesWidth = 54 * scale;
  const pitch = clubCount === 1 ? 18 * scale : pitchOf(clubCount);
  const ticks = pitch * clubCount;
  const wordsWidth = width - ticks - minutesWidth - (clubCount === 1 ? 0 : 8);
  return clubCount === 1
    ? { ticksX: x, pitch, wordsX: x + ticks, wordsWidth, minutesWidth }
    : { ticksX: x + width - ticks, pitch, wordsX: x, wordsWidth, minutesWidth };
}

/** The steps in their order, a box for each club to tick, and each step's cautions below it. @returns the y below them */
export function stepRows(pen: Pen, { steps, clubs, headings }: SheetPrint, place: Place): number {
  if (steps.length === 0) {
    return place.y;
  }
  const { scale } = pen;
  const columns = columnsFor(pen, clubs.length, place);
  const { wordsX, wordsWidth, ticksX, pitch } = columns;
  const headed = clubs.length === 1 ? place.x : wordsX;
  write(pen, headings.steps, { x: headed, y: place.y, width: wordsWidth, sizePt: 9 * scale, bold: true, maxLines: 1 });
  for (const [index, { name }] of clubs.length === 1 ? [] : clubs.entries()) {
    write(pen, name, { x: ticksX + index * pitch, y: place.y + 2 * scale, width: pitch - 2, sizePt: 7 * scale, maxLines: 1 });
  }
  const { set, left } = entriesOf(pen, steps);
  const below = set.reduce((y, step) => stepRow(pen, step, columns, y), place.y + lineHeight(9 * scale) + 2 * scale);
  return writeLeft(pen, left, { x: wordsX, y: below, width: wordsWidth, sizePt: 9 * scale });
}

function stepRow(pen: Pen, step: PrintedStep, { ticksX, pitch, wordsX, wordsWidth, minutesWidth }: Columns, y: number): number {
  const { scale } = pen;
  const sizePt = 10.5 * scale;
  const side = 11 * scale;
  for (const [index, tick] of step.ticks.entries()) {
    if (tick !== "none") {
      box(pen, { x: ticksX + index * pitch, y: y + 0.5 * scale, width: side, height: side }, { crossed: tick === "done" });
    }
  }
  write(pen, step.minutes, { x: wordsX + wordsWidth, y: y + scale, width: minutesWidth, sizePt: 8.5 * scale, right: true, maxLines: 1 });
  const below = Math.max(write(pen, step.words, { x: wordsX, y, width: wordsWidth, sizePt, bold: true }), y + lineHeight(sizePt));
  const cautions = step.cautions.join("; ");
  const end = cautions === "" ? below : write(pen, `! ${cautions}`, { x: wordsX, y: below, width: wordsWidth + minutesWidth, sizePt: 8 * scale });
  return end + 3 * scale;
}
