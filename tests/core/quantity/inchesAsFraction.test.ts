import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inchesAsFraction } from "../../../core/quantity/inchesAsFraction.ts";
import { byLaw } from "../../support/checkOf.ts";

const value = (text: string): number => {
  const [, sign, whole, top, bottom] = /^(-?)(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?$/.exec(text) ?? [];
  return (sign === "-" ? -1 : 1) * (Number(whole ?? 0) + (top === undefined ? 0 : Number(top) / Number(bottom)));
};

describe("inchesAsFraction", () => {
  it.each([
    [45.25 * 25.4, "45 1/4"],
    [45 * 25.4, "45"],
    [12.7, "1/2"],
    [-6.35, "-1/4"],
    [0, "0"],
    [-0.2, "0"],
    [1149, "45 1/4"],
    [(35 + 15.6 / 16) * 25.4, "36"],
  ])("reads %d mm as %s", (mm, text) => {
    expect(inchesAsFraction(mm)).toBe(text);
  });

  it("refuses a length that is no number", () => {
    expect(() => inchesAsFraction(Number.NaN)).toThrow('quantity-out-of-range {"field":"length","unit":"mm"');
  });
});

describe(byLaw(inchesAsFraction, "the nearest sixteenth is within 1/32 in, and no fraction can be halved"), () => {
  it("stays within 1/32 in of the length, in lowest terms", () => {
    fc.assert(
      fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), (mm) => {
        const text = inchesAsFraction(mm);
        expect(Math.abs(value(text) - mm / 25.4)).toBeLessThanOrEqual(1 / 32 + 1e-9);
        expect(text).not.toMatch(/(^|[ -])\d*[02468]\/(2|4|8|16)$/);
      }),
    );
  });
});
