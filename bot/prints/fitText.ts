import type { Typeface } from "./typeface.ts";

interface Room {
  readonly width: number;
  readonly sizePt: number;
  readonly bold: boolean;
  readonly maxLines: number;
}

/** As many letters from the start as fit, with the tail behind them. */
function longestStart(text: string, fits: (part: string) => boolean, tail: string): string {
  const letters = [...text];
  let low = 0;
  let high = letters.length;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(letters.slice(0, middle).join("") + tail)) low = middle;
    else high = middle - 1;
  }
  return letters.slice(0, low).join("");
}

/** A text broken at spaces into lines that fit; a longer word is cut, and what finds no line ends in an ellipsis. */
export function fitText(face: Typeface, text: string, { width, sizePt, bold, maxLines }: Room): readonly string[] {
  const fits = (part: string): boolean => face.widthOf(part, sizePt, bold) <= width;
  const lines: string[] = [];
  let rest = text;
  while (rest !== "" && lines.length < maxLines) {
    if (fits(rest)) {
      return [...lines, rest];
    }
    if (lines.length === maxLines - 1) {
      return [...lines, `${longestStart(rest, fits, "…").trimEnd()}…`];
    }
    const start = longestStart(rest, fits, "") || ([...rest][0] ?? "");
    const space = rest[start.length] === " " ? start.length : start.lastIndexOf(" ");
    const line = space > 0 ? rest.slice(0, space) : start;
    lines.push(line.trimEnd());
    rest = rest.slice(line.length).trimStart();
  }
  return lines;
}
