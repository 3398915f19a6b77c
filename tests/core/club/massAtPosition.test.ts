import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gramsPerPoint, pointsOfMass } from "../../../core/club/massAtPosition.ts";
import { grams, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/swingWeightSensitivity.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "./refusals.ts";

describe(byTable(pointsOfMass, "swingWeightSensitivity", published), () => {
  it.each(published.rows)("moves $points points with $massG g at $fromCapIn in", ({ massG, fromCapIn, points }) => {
    expect(Math.abs(pointsOfMass(grams(massG), mmFromInches(fromCapIn)) - points)).toBeLessThan(published.tolerance.points);
  });

  it("agrees with the rule that a grip 25 g lighter is five points", () => {
    const { massG, fromCapIn, points } = published.rule;
    expect(Math.abs(pointsOfMass(grams(massG), mmFromInches(fromCapIn)) - points)).toBeLessThan(published.tolerance.rulePoints);
  });
});

describe(byTable(gramsPerPoint, "swingWeightSensitivity", published), () => {
  it.each(published.gramsPerPoint as [number, number][])("at %d in is %d g", (fromCapIn, wantedG) => {
    expect(Math.abs(gramsPerPoint(mmFromInches(fromCapIn)) - wantedG)).toBeLessThan(published.tolerance.gramsPerPoint);
  });
});

describe(byLaw(gramsPerPoint, "worth one point at any place, down past the fulcrum and up in the grip"), () => {
  it("holds", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 46, noNaN: true }), (fromCapIn) => {
        fc.pre(Math.abs(fromCapIn - 14) > 0.05);
        const at = mmFromInches(fromCapIn);
        expect(pointsOfMass(gramsPerPoint(at), at)).toBeCloseTo(Math.sign(fromCapIn - 14), 9);
      }),
    );
  });
});

describe("pointsOfMass", () => {
  it("refuses masses and places that cannot be", () => {
    refusedOutside((massG) => pointsOfMass(grams(massG), mmFromInches(40)), -2000, 2000);
    refusedOutside((mm) => pointsOfMass(grams(1), millimetres(mm)), 0, 2000);
  });
});

describe("gramsPerPoint", () => {
  it("refuses the fulcrum, where no mass moves the scale, and nothing farther than a tenth of a millimetre from it", () => {
    const fulcrumMm = 14 * 25.4;
    for (const mm of [fulcrumMm, fulcrumMm + 0.09, fulcrumMm - 0.09]) {
      expect(() => gramsPerPoint(millimetres(mm))).toThrow('"field":"fromFulcrumMm"');
    }
    expect(gramsPerPoint(millimetres(fulcrumMm + 0.11))).toBeCloseTo((49.61166546875 * 25.4) / 0.11, 3);
    expect(gramsPerPoint(millimetres(fulcrumMm - 0.11))).toBeGreaterThan(0);
  });

  it("refuses places that cannot be", () => {
    refusedOutside((mm) => gramsPerPoint(millimetres(mm)), 0, 2000);
  });
});
