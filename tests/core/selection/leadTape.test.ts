import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { grams, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import { defaultLeadTape, leadTapeLength, leadTapeMass } from "../../../core/selection/leadTape.ts";
import published from "../../../fixtures/published/leadTape.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const weighedRoll = { weighedG: grams(4.7), weighedLengthMm: mmFromInches(10) };

describe(byTable(leadTapeMass, "leadTape", published), () => {
  it.each(published.rows)("weighs $massG g for $lengthIn in of $widthIn in tape", ({ widthIn, thicknessMm, lengthIn, massG }) => {
    const tape = { ...defaultLeadTape, widthMm: mmFromInches(widthIn), thicknessMm: millimetres(thicknessMm) };
    expect(Math.abs(leadTapeMass(mmFromInches(lengthIn), tape) - massG)).toBeLessThan(published.tolerance.massG);
  });

  it.each(published.published)("is not far above the rule of $massG g for $lengthIn in", ({ lengthIn, massG }) => {
    const fraction = leadTapeMass(mmFromInches(lengthIn)) / massG - 1;
    expect(fraction).toBeGreaterThan(0);
    expect(fraction).toBeLessThan(published.tolerance.publishedFraction);
  });
});

describe(byTable(leadTapeLength, "leadTape", published), () => {
  it.each(published.rows)("cuts $lengthIn in of $widthIn in tape for $massG g", ({ widthIn, lengthIn, massG }) => {
    const lengthMm = leadTapeLength(grams(massG), { ...defaultLeadTape, widthMm: mmFromInches(widthIn) });
    expect(Math.abs(lengthMm / 25.4 - lengthIn)).toBeLessThan(published.tolerance.massG);
  });
});

describe(byLaw(leadTapeLength, "the length cut for a mass weighs that mass"), () => {
  it("holds by measure and by scale", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), fc.constantFrom(defaultLeadTape, weighedRoll), (massG, tape) => {
        expect(leadTapeMass(leadTapeLength(grams(massG), tape), tape)).toBeCloseTo(massG, 9);
      }),
    );
  });
});

describe("leadTapeMass", () => {
  it("goes by the scale where a length of the roll was weighed", () => {
    expect(leadTapeMass(mmFromInches(4), weighedRoll)).toBeCloseTo(1.88, 9);
  });

  const byMeasure = ["widthMm", "thicknessMm", "densityGPerCm3"].flatMap((field) =>
    [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0].map((value) => ({ field, tape: { ...defaultLeadTape, [field]: value } })),
  );
  const byScale = ["weighedG", "weighedLengthMm"].flatMap((field) =>
    [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0].map((value) => ({ field, tape: { ...weighedRoll, [field]: value } })),
  );
  it.each([...byMeasure, ...byScale])("refuses a $field that cannot be", ({ field, tape }) => {
    expect(() => leadTapeMass(millimetres(10), tape)).toThrow(field);
    expect(() => leadTapeLength(grams(1), tape)).toThrow(field);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -0.1, 10_000.1])("refuses a length of %d mm", (lengthMm) => {
    expect(() => leadTapeMass(millimetres(lengthMm))).toThrow("lengthMm");
  });

  it("takes no tape and ten metres of it", () => {
    expect(leadTapeMass(millimetres(0))).toBe(0);
    expect(leadTapeMass(millimetres(10_000))).toBeCloseTo(201.6252, 3);
  });
});

describe("leadTapeLength", () => {
  it.each([Number.NaN, Number.POSITIVE_INFINITY, -0.1, 1000.1])("refuses a mass of %d g", (massG) => {
    expect(() => leadTapeLength(grams(massG))).toThrow("massG");
  });
});
