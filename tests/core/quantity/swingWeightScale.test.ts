import { describe, expect, it } from "vitest";
import { swingWeightLabel } from "../../../core/quantity/swingWeightLabel.ts";
import { inchOuncesFromOldScale, swingWeightOldScale } from "../../../core/quantity/swingWeightOldScale.ts";
import { swingWeightPointsOf } from "../../../core/quantity/swingWeightPointsOf.ts";
import { FULCRUM_MM, GRAM_MM_PER_POINT, inchOuncesFromPoints, pointsFromInchOunces } from "../../../core/quantity/swingWeightScale.ts";
import { grams, inchOunces, swingWeightPoints } from "../../../core/quantity/units.ts";

describe("the 14-inch scale", () => {
  it("has its fulcrum at 14 in and 49.6117 g·in a point (1.75 in-oz, from memory)", () => {
    expect(FULCRUM_MM).toBeCloseTo(355.6, 9);
    expect(GRAM_MM_PER_POINT / 25.4).toBeCloseTo(49.6117, 4);
  });

  it.each<[string, () => unknown]>([
    ['"field":"inchOunces","unit":"in-oz"', () => pointsFromInchOunces(inchOunces(Number.NaN))],
    ['"field":"inchOunces","unit":"in-oz"', () => swingWeightOldScale(inchOunces(Number.NaN), grams(400))],
    ['"field":"swingWeightPoints","unit":"points"', () => inchOuncesFromPoints(swingWeightPoints(Number.NaN))],
    ['"field":"swingWeightPoints","unit":"points"', () => swingWeightLabel(swingWeightPoints(Number.NaN))],
    ['"field":"totalMassG","unit":"g"', () => inchOuncesFromOldScale(inchOunces(240), grams(5000.1))],
  ])("refuses with %s", (said, call) => {
    expect(call).toThrow(said);
  });

  it("reads a label of twelve characters with its spaces, and no longer one", () => {
    expect(swingWeightPointsOf("   D3.125   ")).toBe(3.125);
    expect(swingWeightPointsOf("   D3.125    ")).toBeNull();
  });
});
