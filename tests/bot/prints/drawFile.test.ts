import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FileRecipe } from "../../../bot/chat/types.ts";
import { drawFile } from "../../../bot/prints/drawFile.ts";
import { drawFiles } from "../../../bot/prints/drawFiles.ts";
import type { SheetPrint } from "../../../bot/prints/sheetPrint.ts";
import { UndrawnFile } from "../../../bot/prints/undrawnFile.ts";
import { instant } from "../../../core/kinds.ts";
import { anySheet } from "./anySheet.ts";
import { driverBuild, leftWedge, wholeBag } from "./someSheets.ts";

const recipe = (sheet: SheetPrint, name = "sheet-57.pdf"): FileRecipe => ({ name, draw: "sheet", sheet });
const drawn = async (sheet: SheetPrint): Promise<string> => Buffer.from((await drawFile(recipe(sheet))).bytes).toString("latin1");
const pagesOf = (pdf: string): number => pdf.match(/\/Type \/Page\b/g)?.length ?? 0;

describe("drawFile", () => {
  it("draws one page whatever is on the sheet", async () => {
    await fc.assert(
      fc.asyncProperty(anySheet, async (sheet) => {
        expect(pagesOf(await drawn(sheet))).toBe(1);
      }),
      { numRuns: 3 },
    );
  });

  it.each([
    ["a driver's build", driverBuild],
    ["fourteen clubs", wholeBag],
    ["a left-hander's wedge", leftWedge],
  ])("draws %s as a PDF of one A4 page, in fonts of its own", async (_name, sheet) => {
    const pdf = await drawn(sheet);
    expect(pdf.startsWith("%PDF-")).toBe(true);
    expect(pagesOf(pdf)).toBe(1);
    expect(pdf).toContain("/MediaBox [0 0 595 842]");
    expect(pdf).toContain("/FontFile2");
  });

  it("gives the same bytes for the same recipe, and others for another moment", async () => {
    const first = await drawn(driverBuild);
    expect(await drawn(structuredClone(driverBuild))).toBe(first);
    expect(await drawn({ ...driverBuild, printedAt: instant(driverBuild.printedAt + 60_000) })).not.toBe(first);
  });

  it("draws a recipe that was stored as JSON", async () => {
    expect(await drawn(JSON.parse(JSON.stringify(wholeBag)) as SheetPrint)).toBe(await drawn(wholeBag));
  });

  it("names the file safely and says what it is", async () => {
    expect(await drawFile(recipe(leftWedge, "../sheet 72.pdf"))).toMatchObject({ name: "sheet-72.pdf", type: "application/pdf" });
  });
});

describe("drawFiles", () => {
  it("draws the files of a card in their order, and none for a card that an earlier version kept", async () => {
    const files = await drawFiles({ files: [recipe(leftWedge, "b.pdf"), recipe(driverBuild, "a.pdf")] });
    expect(files.map(({ name }) => name)).toEqual(["b.pdf", "a.pdf"]);
    expect(await drawFiles({})).toEqual([]);
  });

  it("names the file that cannot be drawn", async () => {
    const broken = recipe({} as SheetPrint, "broken.pdf");
    await expect(drawFiles({ files: [broken] })).rejects.toThrow(new UndrawnFile("the file broken.pdf cannot be drawn"));
  });
});
