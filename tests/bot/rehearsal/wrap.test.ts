import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wrap } from "../../../bot/rehearsal/wrap.ts";

describe("wrap", () => {
  it.each([
    ["one two", 7, ["one two"]],
    ["one two three", 7, ["one two", "  three"]],
    ["abcdefghij", 4, ["abcd", "  ef", "  gh", "  ij"]],
    ["go abcdefghij", 5, ["go", "  abc", "  def", "  ghi", "  j"]],
    ["  kept before", 8, ["  kept", "  before"]],
    ["", 5, [""]],
  ])("breaks %j at %i columns", (text, columns, lines) => {
    expect(wrap(text, columns, "  ")).toEqual(lines);
  });

  it("never exceeds its width and loses nothing but spaces", () => {
    const words = fc.array(fc.string({ unit: fc.constantFrom("a", "b", "é", "😀", " "), maxLength: 40 }), { maxLength: 20 });
    fc.assert(
      fc.property(words, fc.integer({ min: 5, max: 80 }), (parts, columns) => {
        const text = parts.join(" ");
        const lines = wrap(text, columns, "    ");
        for (const line of lines) expect([...line].length).toBeLessThanOrEqual(columns);
        expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
      }),
      { seed: 72 },
    );
  });
});
