import { createRequire } from "node:module";

const require = createRequire(import.meta.url);
/** More than a page has room for in one place. */
const MOST_LETTERS = 600;
const MOST_UNITS = 4 * MOST_LETTERS;
/** Joiners, marks of direction and of how a letter is drawn. */
const INVISIBLE = /\p{Cf}|\p{Variation_Selector}/gu;
const letters = new Intl.Segmenter("en", { granularity: "grapheme" });

/** The font of every print: how wide a text is, and which letters it has. */
export interface Typeface {
  readonly widthOf: (text: string, sizePt: number, bold: boolean) => number;
  /** The text in one line as it can be printed: a letter the font does not have becomes `?`. */
  readonly printable: (text: string) => string;
}

export const fontNames = { plain: "plain", bold: "bold" } as const;

/** The reader of a font file that pdfkit holds for its current font; its types leave it out. */
interface WithFontFile {
  readonly _font: { readonly font: { readonly hasGlyphForCodePoint: (point: number) => boolean } };
}

/** Names the fonts in a document and measures with them. */
export function typefaceIn(document: PDFKit.PDFDocument): Typeface {
  document.registerFont(fontNames.plain, require.resolve("dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf"));
  document.registerFont(fontNames.bold, require.resolve("dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf"));
  document.font(fontNames.plain);
  const plain = (document as unknown as WithFontFile)._font.font;
  document.font(fontNames.bold);
  const bold = (document as unknown as WithFontFile)._font.font;
  const has = (letter: string): boolean =>
    [...letter].every((sign) => {
      const point = sign.codePointAt(0) ?? 0;
      return plain.hasGlyphForCodePoint(point) && bold.hasGlyphForCodePoint(point);
    });
  const widths = new Map<string, number>();
  const widthAt1 = (text: string, isBold: boolean): number => {
    const key = `${isBold ? "b" : "p"}${text}`;
    const width =
      widths.get(key) ??
      document
        .font(isBold ? fontNames.bold : fontNames.plain)
        .fontSize(1)
        .widthOfString(text);
    widths.set(key, width);
    return width;
  };
  return {
    widthOf: (text, sizePt, isBold) => sizePt * widthAt1(text, isBold),
    printable: (text) => {
      const plainSpaces = text
        .slice(0, MOST_UNITS)
        .normalize("NFC")
        .replace(/[\s\p{Cc}]+/gu, " ")
        .trim();
      const signs = [...letters.segment(plainSpaces)].map(({ segment }) => segment.replace(INVISIBLE, ""));
      const whole = signs.slice(0, MOST_LETTERS).map((sign) => (has(sign) ? sign : "?"));
      return `${whole.join("")}${signs.length > MOST_LETTERS || text.length > MOST_UNITS ? "…" : ""}`;
    },
  };
}
