import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitText } from "../../../bot/prints/fitText.ts";

/** Every letter one wide, at size 1. */
const face = { widthOf: (text: string, sizePt: number) => [...text].length * sizePt, printable: (text: string) => text };
const fitted = (text: string, width: number, maxLines: number) => fitText(face, text, { width, sizePt: 1, bold: false, maxLines });

describe("fitText", () => {
  it.each([
    ["", 5, 2, []],
    ["abcde", 5, 1, ["abcde"]],
    ["abcdef", 5, 1, ["abcd…"]],
    ["ab cd ef", 5, 2, ["ab cd", "ef"]],
    ["ab cd ef gh", 5, 2, ["ab cd", "ef gh"]],
    ["ab cd ef ghi", 5, 2, ["ab cd", "ef g…"]],
    ["abc defgh", 5, 1, ["abc…"]],
    ["abc defgh", 5, 2, ["abc", "defgh"]],
    ["abcdefgh", 5, 2, ["abcde", "fgh"]],
    ["a bcdefghi", 5, 3, ["a", "bcdef", "ghi"]],
    ["🙂🙂🙂🙂", 3, 1, ["🙂🙂…"]],
  ])("breaks %j to a width of %d in %d lines at most", (text, width, maxLines, lines) => {
    expect(fitted(text, width, maxLines)).toEqual(lines);
  });

  it("loses no letter of what it does not shorten", () => {
    fc.assert(
      fc.property(fc.lorem({ maxCount: 20 }), fc.integer({ min: 2, max: 40 }), (text, width) => {
        const lines = fitted(text, width, 1000);
        expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
        expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(width);
      }),
    );
  });
});
