import { fitText } from "./fitText.ts";
import type { Typeface } from "./typeface.ts";

/** In points from the top left of the page. */
interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Placed = Area &
  (
    | { readonly kind: "text"; readonly text: string; readonly sizePt: number; readonly bold: boolean }
    | { readonly kind: "box"; readonly crossed: boolean; readonly linePt: number }
    | { readonly kind: "rule" }
  );

/** How roomy a page is set: from large and whole to small and shortened. */
export interface Density {
  readonly scale: number;
  /** Most lines of one text. */
  readonly maxLines: number;
  /** Most entries of one list; what is left out is counted. */
  readonly maxEntries: number;
}

export interface Pen extends Density {
  readonly face: Typeface;
  readonly placed: Placed[];
}

interface Setting {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly sizePt: number;
  readonly bold?: boolean;
  readonly right?: boolean;
  readonly maxLines?: number;
}

const LINE = 1.2;
export const lineHeight = (sizePt: number): number => sizePt * LINE;

/** Sets a text in as many lines as it needs and may have. @returns the y below it */
export function write({ face, placed, ...density }: Pen, text: string, setting: Setting): number {
  const { x, y, width, sizePt, bold = false, right = false, maxLines = density.maxLines } = setting;
  const lines = fitText(face, text, { width, sizePt, bold, maxLines });
  for (const [index, line] of lines.entries()) {
    const taken = face.widthOf(line, sizePt, bold);
    const left = right ? x + width - taken : x;
    placed.push({ kind: "text", text: line, x: left, y: y + index * lineHeight(sizePt), width: taken, height: lineHeight(sizePt), sizePt, bold });
  }
  return y + lines.length * lineHeight(sizePt);
}

export function rule({ placed }: Pen, x: number, y: number, width: number, height = 0.5): void {
  placed.push({ kind: "rule", x, y, width, height });
}

export function box({ placed }: Pen, area: Area, { crossed = false, linePt = 0.8 } = {}): void {
  placed.push({ kind: "box", ...area, crossed, linePt });
}

/** The entries that are set, and how many are not. */
export function entriesOf<T>({ maxEntries }: Density, all: readonly T[]): { readonly set: readonly T[]; readonly left: number } {
  const set = all.slice(0, maxEntries);
  return { set, left: all.length - set.length };
}

/** `… +3` below a list of which three found no room. */
export const writeLeft = (pen: Pen, left: number, setting: Setting): number =>
  left === 0 ? setting.y : write(pen, `… +${left}`, { ...setting, bold: true });
