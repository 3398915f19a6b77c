import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gripTape } from "../../../core/club/gripTape.ts";
import { millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/gripTape.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const tape = { layers: 1, layerMm: mmFromInches(0.005), lengthMm: mmFromInches(10), shaftMm: mmFromInches(0.6), grammageGPerM2: 110 };
const middle = mmFromInches(published.effect.centreFromCapIn);

describe(byTable(gripTape, "gripTape", published), () => {
  it.each(published.rows)("weighs $massG g at $grammageGPerM2 g/m²", ({ grammageGPerM2, massG }) => {
    expect(Math.abs(gripTape({ ...tape, grammageGPerM2 }, middle).massG - massG)).toBeLessThan(published.tolerance.massG);
  });

  it("takes off about a fifth of a point a gram in the middle of the grip", () => {
    const { massG, swingWeightPoints } = gripTape(tape, middle);
    expect(Math.abs(swingWeightPoints / massG - published.effect.pointsPerGram)).toBeLessThan(published.tolerance.pointsPerGram);
  });

  it("takes half a point off an iron with three grams of it", () => {
    const { massG, swingWeightPoints } = gripTape(tape, mmFromInches(published.iron.centreFromCapIn));
    const points = (swingWeightPoints * published.iron.massG) / massG;
    expect(Math.abs(points - published.iron.points)).toBeLessThan(published.iron.tolerancePoints);
  });
});

describe(byLaw(gripTape, "each layer is a cylinder around the one before"), () => {
  it("weighs the sum of single layers on a shaft grown by two thicknesses each", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 }), (layers) => {
        const one = (at: number) => gripTape({ ...tape, shaftMm: millimetres(tape.shaftMm + 2 * at * tape.layerMm) }, middle).massG;
        const sum = Array.from({ length: layers }, (_, at) => one(at)).reduce((total, massG) => total + massG, 0);
        expect(gripTape({ ...tape, layers }, middle).massG).toBeCloseTo(sum, 9);
      }),
    );
  });
});

describe("gripTape", () => {
  const fields = ["layers", "layerMm", "lengthMm", "shaftMm", "grammageGPerM2"];
  const bad = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -0.1, 2001];

  it.each(fields.flatMap((field) => bad.map((value) => ({ field, value }))))("refuses $field of $value", ({ field, value }) => {
    expect(() => gripTape({ ...tape, [field]: value }, middle)).toThrow("quantity-out-of-range");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -0.1, 2000.1])("refuses a middle at %d mm", (fromCapMm) => {
    expect(() => gripTape(tape, millimetres(fromCapMm))).toThrow("centreFromCapMm");
  });

  it("weighs a part of a layer within 0.3 % of that part of one", () => {
    const massG = (layers: number) => gripTape({ ...tape, layers }, middle).massG;
    for (const part of [0.25, 0.5, 0.75]) {
      expect(Math.abs(massG(2 + part) - massG(2) - part * (massG(3) - massG(2))) / massG(1)).toBeLessThan(0.003);
    }
  });

  it("weighs and moves nothing without a layer", () => {
    expect(gripTape({ ...tape, layers: 0 }, middle).massG).toBe(0);
  });
});
