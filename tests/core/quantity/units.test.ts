import { describe, expect, it } from "vitest";
import * as units from "../../../core/quantity/units.ts";
import * as ruleUnits from "../../../core/rules/ruleUnits.ts";

const {
  cyclesPerMinute,
  degrees,
  GRAMS_PER_OUNCE,
  grams,
  inchesFromMm,
  inchOunces,
  kilogramSquareCentimetres,
  millimetres,
  MM_PER_INCH,
  mmFromInches,
  newtonSquareMetres,
  seconds,
  swingWeightPoints,
} = units;
const { cubicCentimetres, microseconds, shoreA, shoreD, squareMillimetres } = ruleUnits;

describe("units", () => {
  it.each([
    cyclesPerMinute,
    degrees,
    grams,
    inchOunces,
    kilogramSquareCentimetres,
    millimetres,
    newtonSquareMetres,
    seconds,
    swingWeightPoints,
    cubicCentimetres,
    microseconds,
    shoreA,
    shoreD,
    squareMillimetres,
  ])("%o names the unit of a number and leaves it as it is", (unit) => {
    expect(unit(12.5)).toBe(12.5);
  });

  it("knows the international inch and the avoirdupois ounce, exact by definition", () => {
    expect([MM_PER_INCH, GRAMS_PER_OUNCE]).toEqual([25.4, 28.349523125]);
    expect(mmFromInches(45.25)).toBeCloseTo(1149.35, 9);
    expect(inchesFromMm(1149.35)).toBeCloseTo(45.25, 9);
  });

  it("refuses a length that is no number, in the unit it came in", () => {
    expect(() => mmFromInches(Number.NaN)).toThrow('"field":"length","unit":"in"');
    expect(() => inchesFromMm(Number.POSITIVE_INFINITY)).toThrow('"field":"length","unit":"mm"');
  });
});
