import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { grams, millimetres } from "../../../core/quantity/units.ts";
import { centreShiftByAdding, centreShiftByMoving } from "../../../core/selection/centreOfMassShift.ts";
import { weightMovedAlongShaft } from "../../../core/selection/weightMovedAlongShaft.ts";
import published from "../../../fixtures/published/centreOfMassShift.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const massG = fc.double({ min: 0.1, max: 40, noNaN: true });
const placeMm = fc.double({ min: -80, max: 80, noNaN: true });

describe(byTable(centreShiftByMoving, "centreOfMassShift", published), () => {
  it.each(published.moving)("shifts $shiftMm mm when $movedG g of $headMassG g go $distanceMm mm", (row) => {
    const shift = centreShiftByMoving(grams(row.movedG), millimetres(row.distanceMm), grams(row.headMassG));
    expect(Math.abs(shift - row.shiftMm)).toBeLessThan(published.tolerance.shiftMm);
  });
});

describe(byTable(centreShiftByAdding, "centreOfMassShift", published), () => {
  it.each(published.adding)("shifts $shiftMm mm when $addedG g come on $headMassG g at $distanceMm mm", (row) => {
    const shift = centreShiftByAdding(grams(row.addedG), millimetres(row.distanceMm), grams(row.headMassG));
    expect(Math.abs(shift - row.shiftMm)).toBeLessThan(published.tolerance.shiftMm);
  });

  it("needs ten 4-inch strips for a quarter of an inch", () => {
    const { addedG, distanceMm, headMassG, shiftMm } = published.published;
    const shift = centreShiftByAdding(grams(addedG), millimetres(distanceMm), grams(headMassG));
    expect(Math.abs(shift - shiftMm)).toBeLessThan(published.tolerance.publishedMm);
  });
});

describe(byLaw(centreShiftByMoving, "moving is adding at the new place what was taken from the old"), () => {
  it("holds for moments about the weightless centre", () => {
    fc.assert(
      fc.property(massG, placeMm, placeMm, (moved, from, to) => {
        const without = grams(200);
        const shiftTo = (at: number) => centreShiftByAdding(grams(moved), millimetres(at), without);
        const shift = centreShiftByMoving(grams(moved), millimetres(to - from), grams(200 + moved));
        expect(shift).toBeCloseTo(shiftTo(to) - shiftTo(from), 9);
      }),
    );
  });
});

describe(byTable(weightMovedAlongShaft, "centreOfMassShift", published), () => {
  it.each(published.alongShaft)("moves $points points when $movedG g go $distanceMm mm down the shaft", ({ movedG, distanceMm, points }) => {
    const moved = weightMovedAlongShaft(grams(movedG), millimetres(distanceMm));
    expect(Math.abs(moved - points)).toBeLessThan(published.tolerance.points);
  });
});

const bad = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

describe("centreShiftByMoving", () => {
  it("moves the whole head at most, and refuses a weight heavier than the head", () => {
    expect(centreShiftByMoving(grams(200), millimetres(60), grams(200))).toBe(60);
    expect(() => centreShiftByMoving(grams(200.1), millimetres(60), grams(200))).toThrow("movedG");
  });

  it("takes half a metre either way and no more", () => {
    expect(centreShiftByMoving(grams(1), millimetres(-500), grams(100))).toBe(-5);
    expect(centreShiftByMoving(grams(1), millimetres(500), grams(100))).toBe(5);
    expect(() => centreShiftByMoving(grams(1), millimetres(-500.1), grams(100))).toThrow("distanceMm");
    expect(() => centreShiftByMoving(grams(1), millimetres(500.1), grams(100))).toThrow("distanceMm");
  });

  it.each(bad)("refuses %d in every place", (value) => {
    expect(() => centreShiftByMoving(grams(value), millimetres(1), grams(200))).toThrow("quantity-out-of-range");
    expect(() => centreShiftByMoving(grams(1), millimetres(value), grams(200))).toThrow("quantity-out-of-range");
    expect(() => centreShiftByMoving(grams(1), millimetres(1), grams(value))).toThrow("quantity-out-of-range");
  });

  it("refuses a head of less than a gram and a weight of less than nothing", () => {
    expect(() => centreShiftByMoving(grams(0), millimetres(1), grams(0.99))).toThrow("headMassG");
    expect(() => centreShiftByMoving(grams(-0.1), millimetres(1), grams(200))).toThrow("movedG");
    expect(centreShiftByMoving(grams(0), millimetres(1), grams(1))).toBe(0);
  });
});

describe("centreShiftByAdding", () => {
  it.each(bad)("refuses %d in every place", (value) => {
    expect(() => centreShiftByAdding(grams(value), millimetres(1), grams(200))).toThrow("quantity-out-of-range");
    expect(() => centreShiftByAdding(grams(1), millimetres(value), grams(200))).toThrow("quantity-out-of-range");
    expect(() => centreShiftByAdding(grams(1), millimetres(1), grams(value))).toThrow("quantity-out-of-range");
  });

  it("refuses a weight of less than nothing or of more than 2 kg", () => {
    expect(() => centreShiftByAdding(grams(-0.1), millimetres(1), grams(200))).toThrow("addedG");
    expect(() => centreShiftByAdding(grams(2000.1), millimetres(1), grams(200))).toThrow("addedG");
    expect(centreShiftByAdding(grams(2000), millimetres(2), grams(2000))).toBe(1);
  });
});

describe("weightMovedAlongShaft", () => {
  it.each(bad)("refuses %d in every place", (value) => {
    expect(() => weightMovedAlongShaft(grams(value), millimetres(1))).toThrow("quantity-out-of-range");
    expect(() => weightMovedAlongShaft(grams(1), millimetres(value))).toThrow("quantity-out-of-range");
  });

  it("refuses a weight of less than nothing", () => {
    expect(() => weightMovedAlongShaft(grams(-0.1), millimetres(1))).toThrow("movedG");
  });
});
