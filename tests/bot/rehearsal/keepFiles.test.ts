import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { isAbsolute, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { FileRecipe } from "../../../bot/chat/types.ts";
import { drawFile } from "../../../bot/prints/drawFile.ts";
import type { SheetPrint } from "../../../bot/prints/sheetPrint.ts";
import { keepFilesIn } from "../../../bot/rehearsal/keepFiles.ts";
import { driverBuild, leftWedge } from "../prints/someSheets.ts";
import { card } from "./cards.ts";

describe("keepFilesIn", () => {
  let folder: string;
  let asked: number;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "rangecall-kept-"));
    asked = 0;
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  const recipe = (sheet: SheetPrint, name = "sheet.pdf"): FileRecipe => ({ name, draw: "sheet", sheet });
  const keep = (...files: readonly FileRecipe[]) =>
    keepFilesIn(() => {
      asked += 1;
      return join(folder, "files");
    })(card("57", { files }));

  it("makes no folder for a card without files", async () => {
    expect(await keep()).toEqual([]);
    expect(asked).toBe(0);
    expect(existsSync(join(folder, "files"))).toBe(false);
  });

  it("writes what is drawn, and says under which name, how long and where", async () => {
    const { bytes } = await drawFile(recipe(driverBuild));
    const [kept] = await keep(recipe(driverBuild, "sheet 57.pdf"));
    expect(kept).toEqual({ name: "sheet-57.pdf", bytes: bytes.length, path: join(folder, "files", "sheet-57.pdf") });
    expect(isAbsolute(kept?.path ?? "")).toBe(true);
    expect(Buffer.from(bytes).equals(readFileSync(kept?.path ?? ""))).toBe(true);
  });

  it("writes the same file once, and another of the same name beside it", async () => {
    const paths = [
      ...(await keep(recipe(driverBuild))),
      ...(await keep(recipe(driverBuild))),
      ...(await keep(recipe(leftWedge))),
      ...(await keep(recipe(leftWedge))),
    ].map(({ path }) => path.slice(folder.length + 1));
    expect(paths).toEqual(["files/sheet.pdf", "files/sheet.pdf", "files/sheet-2.pdf", "files/sheet-2.pdf"]);
  });

  it("never writes outside its folder", async () => {
    await keep(recipe(leftWedge, "../../away.pdf"), recipe(leftWedge, "/tmp/away.pdf"));
    expect(readdirSync(folder)).toEqual(["files"]);
    expect(readdirSync(join(folder, "files")).sort()).toEqual(["away.pdf", "tmp-away.pdf"]);
  });
});
