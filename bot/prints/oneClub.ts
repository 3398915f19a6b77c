import { box, entriesOf, lineHeight, type Pen, rule, write, writeLeft } from "./pen.ts";
import type { Labelled, PrintedClub, PrintedTarget, SheetPrint } from "./sheetPrint.ts";
import { stepRows } from "./stepRows.ts";

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Legible at arm's length, however small the rest is set. */
const LEAD_PT = 18;
const SETTING_PT = 30;
const LEADS_A_ROW = 2;
const GUTTER = 16;
const MEASURE_SHARE = 0.37;

/** The largest size at which a text stands in one line, and the smallest when none is. */
function largestPt({ face }: Pen, text: string, width: number, from: number, to: number): number {
  const natural = face.widthOf(text, from, true);
  return natural <= width ? from : Math.max(to, Math.floor(from * (width / natural)));
}

function settingBand(pen: Pen, { label, value }: Labelled, { x, y, width }: Place): number {
  const pad = 8;
  const sizePt = largestPt(pen, value, width - 2 * pad, SETTING_PT, LEAD_PT);
  const words = write(pen, label, { x: x + pad, y: y + 4, width: width - 2 * pad, sizePt: 9, maxLines: 1 });
  const below = write(pen, value, { x: x + pad, y: words, width: width - 2 * pad, sizePt, bold: true, maxLines: 2 }) + 4;
  box(pen, { x, y, width, height: below - y }, { linePt: 2 });
  return below + 6;
}

function leadCells(pen: Pen, lead: readonly Labelled[], { x, y, width }: Place): number {
  const { set, left } = entriesOf(pen, lead);
  const cell = (width - GUTTER) / LEADS_A_ROW;
  let top = y;
  for (let first = 0; first < set.length; first += LEADS_A_ROW) {
    const bottoms = set.slice(first, first + LEADS_A_ROW).map(({ label, value }, index) => {
      const at = x + index * (cell + GUTTER);
      const words = write(pen, label, { x: at, y: top, width: cell, sizePt: 9, maxLines: 1 });
      return write(pen, value, { x: at, y: words, width: cell, sizePt: largestPt(pen, value, cell, 22, LEAD_PT), bold: true, maxLines: 2 });
    });
    top = Math.max(...bottoms) + 4;
  }
  return writeLeft(pen, left, { x, y: top, width, sizePt: 9 });
}

function labelledLines(pen: Pen, all: readonly Labelled[], { x, y, width }: Place): number {
  const { scale } = pen;
  const sizePt = 10.5 * scale;
  const labels = all.some(({ label }) => label !== "") ? 66 * scale : 0;
  const { set, left } = entriesOf(pen, all);
  let below = y;
  for (const { label, value } of set) {
    const words = write(pen, label, { x, y: below + 1.5 * scale, width: labels - 6, sizePt: 8.5 * scale, maxLines: 1 });
    below = Math.max(words, write(pen, value, { x: x + labels, y: below, width: width - labels, sizePt })) + 1.5 * scale;
  }
  return writeLeft(pen, left, { x: x + labels, y: below, width: width - labels, sizePt });
}

function measureRow(pen: Pen, { what, wanted, tolerance, measured }: PrintedTarget, { x, y, width }: Place): number {
  const { scale } = pen;
  const field = width * 0.4;
  const words = width - field - 8;
  const first = write(pen, `${what} ${wanted}`, { x, y, width: words, sizePt: 10.5 * scale, bold: true });
  const second = write(pen, tolerance, { x, y: first, width: words, sizePt: 8.5 * scale, maxLines: 1 });
  const height = Math.max(second - y, 20 * scale);
  box(pen, { x: x + width - field, y, width: field, height });
  if (measured !== null) {
    write(pen, measured, { x: x + width - field + 4, y: y + 3 * scale, width: field - 8, sizePt: 10.5 * scale, maxLines: 1 });
  }
  return y + height + 5 * scale;
}

function measureColumn(pen: Pen, heading: string, targets: readonly PrintedTarget[], { x, y, width }: Place): number {
  const { scale } = pen;
  if (targets.length === 0) {
    return y;
  }
  const { set, left } = entriesOf(pen, targets);
  let below = write(pen, heading, { x, y, width, sizePt: 9 * scale, bold: true, maxLines: 1 }) + 2 * scale;
  for (const target of set) {
    below = measureRow(pen, target, { x, y: below, width });
  }
  return writeLeft(pen, left, { x, y: below, width, sizePt: 9 * scale });
}

/** One club: setting, cut and weight large, then its parts, then steps beside what is measured. @returns the y below it */
export function oneClub(pen: Pen, print: SheetPrint, club: PrintedClub, { x, y, width }: Place): number {
  const { scale } = pen;
  const set = club.setting === null ? y : settingBand(pen, club.setting, { x, y, width });
  const lead = leadCells(pen, club.lead, { x, y: set, width });
  rule(pen, x, lead, width);
  const parts = labelledLines(pen, club.parts, { x, y: lead + 4 * scale, width }) + 3 * scale;
  rule(pen, x, parts, width);
  const measure = width * MEASURE_SHARE;
  const top = parts + 5 * scale;
  const steps = stepRows(pen, print, { x, y: top, width: width - (club.targets.length === 0 ? 0 : measure + GUTTER) });
  return Math.max(
    steps,
    measureColumn(pen, print.headings.measure, club.targets, { x: x + width - measure, y: top, width: measure }),
    top + lineHeight(9),
  );
}
