import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wordsOf } from "../../../bot/boundary/wordsOf.ts";

const texts = (text: string): readonly string[] => wordsOf(text).words.map((word) => word.text);

describe("wordsOf", () => {
  it.each([
    ["Loft: 9.25, face=0.5 open!", ["loft", "9.25", "face", "0.5", "open"]],
    ["9,25,length 45,25", ["9.25", "length", "45.25"]],
    ["d3,45 1/4", ["d3", "45", "1/4"]],
    ["driver 9,45 1/4", ["driver", "9", "45", "1/4"]],
    ['45¼" – Toll’s', ["45", "1/4", '"', "toll's"]],
    ["loft9.25 3wood dunlin60x", ["loft", "9.25", "3", "wood", "dunlin", "60x"]],
    ["by tee-20 or -20", ["by", "tee-20", "or", "-20"]],
    ["oxtoby/toll 1/4 9.25/0.5", ["oxtoby", "toll", "1/4", "9.25", "0.5"]],
    ["Núñez ØRE", ["nunez", "ore"]],
  ])("parts %j", (text, expected) => expect(texts(text)).toEqual(expected));

  it("keeps each word's place in the text, in order, whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
        let end = 0;
        for (const { from, to } of wordsOf(text).words) {
          expect(from).toBeGreaterThanOrEqual(end);
          expect(to).toBeGreaterThan(from);
          end = to;
        }
        expect(end).toBeLessThanOrEqual(text.length);
      }),
      { seed: 2, numRuns: 100 },
    );
  });

  it.each([
    ["where?", true],
    ["by 2:30?\nthanks", true],
    ["what? no", false],
  ])("knows whether %j asks", (text, asks) => expect(wordsOf(text).asks).toBe(asks));
});
