import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inchOuncesFromOldScale, swingWeightOldScale } from "../../../core/quantity/swingWeightOldScale.ts";
import { grams, inchOunces } from "../../../core/quantity/units.ts";
import worked from "../../../fixtures/published/pointMassClubs.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "../club/refusals.ts";

describe(byTable(swingWeightOldScale, "pointMassClubs", worked), () => {
  it.each(worked.rows)("reads $oldScaleInOz in-oz of the $club", ({ swingWeightInOz, totalMassG, oldScaleInOz }) => {
    expect(Math.abs(swingWeightOldScale(inchOunces(swingWeightInOz), grams(totalMassG)) - oldScaleInOz)).toBeLessThan(worked.tolerance.inOz);
  });
});

describe(byTable(inchOuncesFromOldScale, "pointMassClubs", worked), () => {
  it.each(worked.rows)("comes to $swingWeightInOz in-oz of the $club", ({ swingWeightInOz, totalMassG, oldScaleInOz }) => {
    expect(Math.abs(inchOuncesFromOldScale(inchOunces(oldScaleInOz), grams(totalMassG)) - swingWeightInOz)).toBeLessThan(worked.tolerance.inOz);
  });
});

describe(byLaw(swingWeightOldScale, "an ounce is two inch-ounces; there and back is where it was"), () => {
  it("holds", () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 300, noNaN: true }), fc.double({ min: 0, max: 1000, noNaN: true }), (moment, massG) => {
        const old = swingWeightOldScale(inchOunces(moment), grams(massG));
        expect(swingWeightOldScale(inchOunces(moment), grams(massG + 28.349523125)) - old).toBeCloseTo(2, 9);
        expect(inchOuncesFromOldScale(old, grams(massG))).toBeCloseTo(moment, 9);
      }),
    );
  });
});

describe("swingWeightOldScale", () => {
  it("refuses moments and masses that cannot be", () => {
    refusedOutside((moment) => swingWeightOldScale(inchOunces(moment), grams(320)), -12_000, 12_000);
    refusedOutside((massG) => swingWeightOldScale(inchOunces(220), grams(massG)), 0, 5000);
  });
});

describe("inchOuncesFromOldScale", () => {
  it("refuses moments and masses that cannot be", () => {
    refusedOutside((moment) => inchOuncesFromOldScale(inchOunces(moment), grams(320)), -12_000, 12_000);
    refusedOutside((massG) => inchOuncesFromOldScale(inchOunces(220), grams(massG)), 0, 5000);
  });
});
