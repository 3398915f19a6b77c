import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readAngleDeg, readLengthMm, readSwingWeight } from "../../../bot/boundary/readQuantity.ts";

describe("readLengthMm: an inch is 25.4 mm exactly (international inch)", () => {
  it.each([
    ["45 1/4", 1149.35],
    ['45.25"', 1149.35],
    ["45 1/4 in", 1149.35],
    ["45,25", 1149.35],
    ["45¼", 1149.35],
    ["45-1/4", 1149.35],
    ["forty", null],
    ["1149 mm", 1149],
    ["1149", 1149],
    ["45 1/4 deg", null],
    ["45 1/4 and more", null],
    ["-45", null],
    ["", null],
    ["1/0", null],
    ["1".repeat(60), null],
  ])("reads %j as %s mm", (text, mm) => {
    const read = readLengthMm(text);
    if (mm === null) expect(read).toBeNull();
    else expect(read).toBeCloseTo(mm, 9);
  });

  it("reads every sixteenth of an inch as written with a fraction", () => {
    fc.assert(
      fc.property(fc.integer({ min: 18, max: 48 }), fc.integer({ min: 1, max: 15 }), (inches, sixteenths) => {
        expect(readLengthMm(`${inches} ${sixteenths}/16`)).toBeCloseTo((inches + sixteenths / 16) * 25.4, 9);
      }),
      { seed: 3 },
    );
  });
});

describe("readAngleDeg", () => {
  it.each([
    ["9.25", 9.25],
    ["9 1/4°", 9.25],
    ["9,25", 9.25],
    ["half open", 0.5],
    ["0.5 closed", -0.5],
    ["square", 0],
    ["-2", -2],
    ["9 in", null],
    ["half up", null],
  ])("reads %j as %s°", (text, deg) => expect(readAngleDeg(text)).toBe(deg));
});

// ten points a letter, D0 = 0 (common practice, no source)
describe("readSwingWeight", () => {
  it.each([
    ["d3", 3],
    ["D 3.5", 3.5],
    ["d3 1/2", 3.5],
    ["C9", -1],
    ["e0", 10],
    ["A0", -30],
    ["G10", 40],
    ["h1", null],
    ["d14", null],
    ["3", null],
    ["d", null],
  ])("reads %j as %s points", (text, points) => expect(readSwingWeight(text)).toBe(points));
});

describe("the quantity readers", () => {
  it("throw on no text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
        for (const read of [readLengthMm, readAngleDeg, readSwingWeight]) expect([null, expect.any(Number)]).toContainEqual(read(text));
      }),
      { seed: 5, numRuns: 100 },
    );
  });
});
