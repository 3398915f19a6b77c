import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gramsPerPoint, pointsOfMass } from "../../../core/club/massAtPosition.ts";
import { grams, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/swingWeightSensitivity.json" with { type: "json" };

fc.configureGlobal({ seed: 20270503 });

describe(`pointsOfMass (${published.source})`, () => {
  it.each(published.rows)("moves $points points with $massG g at $fromCapIn in", ({ massG, fromCapIn, points }) => {
    expect(Math.abs(pointsOfMass(grams(massG), mmFromInches(fromCapIn)) - points)).toBeLessThan(published.tolerance.points);
  });

  it("agrees with the rule that a grip 25 g lighter is five points", () => {
    const { massG, fromCapIn, points } = published.rule;
    expect(Math.abs(pointsOfMass(grams(massG), mmFromInches(fromCapIn)) - points)).toBeLessThan(published.tolerance.rulePoints);
  });

  it("refuses a mass that is no number", () => {
    expect(() => pointsOfMass(grams(Number.NaN), mmFromInches(40))).toThrow("quantity-out-of-range");
  });
});

describe(`gramsPerPoint (${published.source})`, () => {
  it.each(published.gramsPerPoint as [number, number][])("at %d in is %d g", (fromCapIn, wantedG) => {
    expect(Math.abs(gramsPerPoint(mmFromInches(fromCapIn)) - wantedG)).toBeLessThan(published.tolerance.gramsPerPoint);
  });

  it("is worth one point at any place, down in the grip and up past the fulcrum (inverse law)", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 46, noNaN: true }), (fromCapIn) => {
        fc.pre(Math.abs(fromCapIn - 14) > 0.01);
        const at = mmFromInches(fromCapIn);
        expect(pointsOfMass(gramsPerPoint(at), at)).toBeCloseTo(Math.sign(fromCapIn - 14), 9);
      }),
    );
  });

  it("refuses the fulcrum, where no mass moves the scale", () => {
    expect(() => gramsPerPoint(mmFromInches(14))).toThrow("quantity-out-of-range");
  });
});
