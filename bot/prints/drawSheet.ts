import PDFDocument from "pdfkit";
import { layOutSheet, page } from "./layOutSheet.ts";
import type { Placed } from "./pen.ts";
import type { SheetPrint } from "./sheetPrint.ts";
import { fontNames, typefaceIn } from "./typeface.ts";

/** An empty page; its date is that of the print, so that the same print gives the same bytes. */
export function sheetDocument({ title, printedAt }: Pick<SheetPrint, "title" | "printedAt">): PDFKit.PDFDocument {
  return new PDFDocument({
    size: [page.width, page.height],
    margin: 0,
    info: { Title: title, CreationDate: new Date(printedAt) },
  });
}

function drawPlaced(document: PDFKit.PDFDocument, placed: Placed): void {
  const { x, y, width, height } = placed;
  switch (placed.kind) {
    case "text":
      document
        .font(placed.bold ? fontNames.bold : fontNames.plain)
        .fontSize(placed.sizePt)
        .text(placed.text, x, y, { lineBreak: false });
      return;
    case "rule":
      document.rect(x, y, width, height).fill();
      return;
    case "box":
      document.lineWidth(placed.linePt).rect(x, y, width, height).stroke();
      if (placed.crossed) {
        document
          .moveTo(x, y)
          .lineTo(x + width, y + height)
          .moveTo(x + width, y)
          .lineTo(x, y + height)
          .stroke();
      }
  }
}

/** A sheet as a PDF of one page. */
export function drawSheet(print: SheetPrint): Promise<Uint8Array> {
  const document = sheetDocument(print);
  const chunks: Buffer[] = [];
  return new Promise((resolve, reject) => {
    document.on("data", (chunk: Buffer) => chunks.push(chunk));
    document.on("end", () => resolve(Buffer.concat(chunks)));
    document.on("error", reject);
    for (const placed of layOutSheet(print, typefaceIn(document))) {
      drawPlaced(document, placed);
    }
    document.end();
  });
}
