import { basename, join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fileName } from "../../../bot/prints/fileName.ts";

describe("fileName", () => {
  it.each([
    ["sheet-57.pdf", "sheet-57.pdf"],
    ["sheet 57 Żółć.pdf", "sheet-57-Żółć.pdf"],
    ["../../etc/sheet.pdf", "etc-sheet.pdf"],
    ["C:\\sheets\\57.pdf", "C-sheets-57.pdf"],
    [".hidden", "hidden"],
    ["a\nb\u0000c.pdf", "a-b-c.pdf"],
    ["", "file"],
    ["..", "file"],
    ["🙂", "file"],
  ])("makes of %j the name %s", (name, safe) => {
    expect(fileName(name)).toBe(safe);
  });

  it("keeps the end of a long name", () => {
    expect(fileName(`${"x".repeat(300)}.pdf`)).toBe(`${"x".repeat(56)}.pdf`);
  });

  it("stays in its folder and within 255 bytes", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (name) => {
        const safe = fileName(name);
        expect(basename(join("/folder", safe))).toBe(safe);
        expect(Buffer.byteLength(safe)).toBeLessThanOrEqual(250);
        expect(safe).not.toMatch(/^\.|[\p{Cc}/\\]/u);
      }),
    );
  });
});
