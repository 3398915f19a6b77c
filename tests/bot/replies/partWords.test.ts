import { describe, expect, it } from "vitest";
import { tipWords } from "../../../bot/replies/partWords.ts";
import { millimetres } from "../../../core/quantity/units.ts";
import { somePiece } from "../../core/buildSheet/somePieces.ts";

const mm = (length: number): string => `${length} mm`;
const tipped = somePiece({ tipTrimMm: millimetres(12) });

describe("tipWords", () => {
  it.each([
    ["nothing is known of it", null, null, "none"],
    ["nothing comes off", 0, null, "none"],
    ["a raw shaft is cut", 24, null, "24 mm"],
    ["a prepared one is cut already", 12, tipped, "12 mm, done already"],
    ["a saw cuts no less", 13, tipped, "13 mm, done already"],
    ["more is to come off a prepared one", 24, tipped, "12 mm more, 24 mm in all"],
  ])("says what is cut off the tip when %s", (_, tipTrimMm, piece, words) => {
    expect(tipWords({ tipTrimMm, piece }, mm)).toBe(words);
  });
});
