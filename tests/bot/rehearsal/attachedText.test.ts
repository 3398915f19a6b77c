import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { attachedText } from "../../../bot/rehearsal/attachedText.ts";

const folder = mkdtempSync(join(tmpdir(), "rangecall-attached-"));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, bytes: string | Buffer): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

describe("attachedText", () => {
  it("reads text without the line break at its end", async () => {
    expect(await attachedText(file("a.txt", "build oxtoby driver\n45¼\n"))).toEqual({ kind: "text", text: "build oxtoby driver\n45¼" });
  });

  it.each([
    ["a file that is not there", () => join(folder, "none.txt"), /^no file /],
    ["a folder", () => folder, / is no file$/],
    ["a device without an end", () => "/dev/zero", / is no file$/],
    ["bytes that are no text", () => file("b.bin", Buffer.from([0xff, 0xfe, 0x80])), /^cannot read .* as text/],
    ["more than a megabyte", () => file("c.txt", "x".repeat(1_000_001)), /larger than 1000000 bytes$/],
  ])("refuses %s", async (_, path, reason) => {
    expect(await attachedText(path())).toEqual({ kind: "unreadable", reason: expect.stringMatching(reason) });
  });
});
