import { describe, expect, it } from "vitest";
import type { Card } from "../../bot/chat/types.ts";
import { instant } from "../../core/kinds.ts";
import { cardWithButtons, card as plainCard } from "../bot/rehearsal/cards.ts";
import { cardPicture } from "./cardPicture.ts";
import { galleryPage } from "./galleryPage.ts";

/** Width and height stand in the first chunk of a PNG. */
async function sizeOf(card: Card): Promise<{ readonly width: number; readonly height: number }> {
  const png = await cardPicture({ content: card, files: [], channel: "range", to: null, at: instant(0), zone: "UTC" });
  const bytes = new DataView(png.buffer, png.byteOffset);
  return { width: bytes.getUint32(16), height: bytes.getUint32(20) };
}

describe("cardPicture", () => {
  it("is 390 px wide, and higher by each line that a text needs", async () => {
    const short = await sizeOf(plainCard("57", { lines: [["word"]] }));
    const long = await sizeOf(plainCard("57", { lines: [["word ".repeat(100)]] }));
    const endless = await sizeOf(plainCard("57", { lines: [["W".repeat(200)]] }));
    expect([short.width, long.width, endless.width]).toEqual([390, 390, 390]);
    expect(long.height).toBeGreaterThan(short.height + 100);
    expect(endless.height).toBeGreaterThan(short.height + 60);
  });

  it("has room for fields and buttons", async () => {
    const bare = await sizeOf(plainCard("57"));
    expect((await sizeOf(cardWithButtons("57", "Go", "Change"))).height).toBeGreaterThan(bare.height);
    expect((await sizeOf(plainCard("57", { fields: [{ label: "Posted by", value: ["Marta"] }] }))).height).toBeGreaterThan(bare.height);
  });
});

const look = { heading: "Every card", other: { page: "chat.html", name: "In the chat" } };

describe("galleryPage", () => {
  it("lists every picture under its kind and every file, and takes no text of people for its own", () => {
    const page = galleryPage(
      [{ kind: "sheet", title: '57 "<b>&', picture: "cards/001-sheet.png", files: ["files/sheet 57.pdf"] }],
      ["files/sample.pdf"],
      look,
    );
    expect(page).toContain('alt="57 &#34;&#60;b&#62;&#38;"');
    expect(page).toContain('<h2 id="sheet">sheet (1)</h2>');
    expect(page).toContain('href="files/sheet%2057.pdf"');
    expect(page).toContain('href="files/sample.pdf"');
  });

  it("shows a picture among the files as itself, and a sheet as a link", () => {
    const page = galleryPage([], ["files/ready board.png", "files/sample.pdf"], look);
    expect(page).toContain('<img src="files/ready%20board.png"');
    expect(page).not.toContain('<img src="files/sample.pdf"');
  });
});
