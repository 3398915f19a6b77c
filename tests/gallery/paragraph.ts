import { type Box, box } from "./picture.ts";

export interface Piece {
  readonly text: string;
  readonly bold: boolean;
}

/** Pieces of text as words, each of one piece or more: `**14:12**,` stays together. */
function wordsOf(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const words: Piece[][] = [[]];
  for (const { text, bold } of pieces) {
    for (const [index, part] of text.split(/\s+/).entries()) {
      if (index > 0) words.push([]);
      if (part !== "") words.at(-1)?.push({ text: part, bold });
    }
  }
  return words.filter((word) => word.length > 0);
}

/** A paragraph: words side by side that go on in the next line, one that is wider than a line broken. */
export function paragraph(pieces: readonly Piece[], fontSize: number, color: string): Box {
  const words = wordsOf(pieces).map((word) =>
    box(
      { maxWidth: "100%", marginRight: fontSize * 0.32 },
      word.map(({ text, bold }) =>
        box({ fontWeight: bold ? 700 : 400, wordBreak: "break-all", ...(word.length === 1 ? { maxWidth: "100%" } : {}) }, text),
      ),
    ),
  );
  return box({ flexWrap: "wrap", fontSize, lineHeight: 1.35, color }, words);
}
