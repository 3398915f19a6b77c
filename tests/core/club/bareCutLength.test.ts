import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bareCutLength } from "../../../core/club/bareCutLength.ts";
import { playingLength } from "../../../core/club/playingLength.ts";
import { millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/shaftTrimming.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { expectBounds } from "./refusals.ts";

const inches = (mm: number) => mm / 25.4;

describe(byTable(bareCutLength, "shaftTrimming", published), () => {
  it.each(published.cuts)("cuts $cutIn in for a club of $lengthIn in", ({ lengthIn, boreIn, capIn, cutIn }) => {
    const cut = bareCutLength(mmFromInches(lengthIn), mmFromInches(boreIn), mmFromInches(capIn));
    expect(Math.abs(inches(cut) - cutIn)).toBeLessThan(published.tolerance.cutIn);
  });

  it("makes the club a quarter inch longer when the same shaft stands a quarter inch higher in the bore", () => {
    const cut = (lengthIn: number, boreIn: number) => bareCutLength(mmFromInches(lengthIn), mmFromInches(boreIn), mmFromInches(0.125));
    expect(cut(45.25, 1.5)).toBeCloseTo(cut(45, 1.25), 9);
  });
});

describe(byTable(playingLength, "shaftTrimming", published), () => {
  it.each(published.cuts)("makes a club of $lengthIn in from $cutIn in", ({ lengthIn, boreIn, capIn, cutIn }) => {
    const length = playingLength(mmFromInches(cutIn), mmFromInches(boreIn), mmFromInches(capIn));
    expect(Math.abs(inches(length.lengthMm) - lengthIn)).toBeLessThan(published.tolerance.cutIn);
    expect(length.method).toBe("60-degree plane");
  });
});

describe(byLaw(playingLength, "undoes the bare cut"), () => {
  it("finds back the length that was cut for", () => {
    fc.assert(
      fc.property(fc.double({ min: 500, max: 1300, noNaN: true }), fc.double({ min: 0, max: 60, noNaN: true }), (lengthMm, boreMm) => {
        const [bore, cap] = [millimetres(boreMm), millimetres(3)];
        expect(playingLength(bareCutLength(millimetres(lengthMm), bore, cap), bore, cap).lengthMm).toBeCloseTo(lengthMm, 9);
      }),
    );
  });
});

describe("bareCutLength", () => {
  it("refuses a playing length, a bore or a cap that cannot be", () => {
    expectBounds((mm) => bareCutLength(millimetres(mm), millimetres(0), millimetres(0)), { highest: 2000, step: 0.1 });
    expectBounds((mm) => bareCutLength(millimetres(1143), millimetres(mm), millimetres(3)), { lowest: 0, highest: 200, step: 0.1 });
    expectBounds((mm) => bareCutLength(millimetres(1143), millimetres(30), millimetres(mm)), { lowest: 0, highest: 50, step: 0.1 });
  });

  it("refuses a cut of nothing and takes one of a tenth of a millimetre", () => {
    expect(() => bareCutLength(millimetres(33), millimetres(30), millimetres(3))).toThrow("quantity-out-of-range");
    expect(bareCutLength(millimetres(33.1), millimetres(30), millimetres(3))).toBeCloseTo(0.1, 9);
  });
});

describe("playingLength", () => {
  it("refuses a cut, a bore or a cap that cannot be", () => {
    expectBounds((mm) => playingLength(millimetres(mm), millimetres(30), millimetres(3)), { lowest: 1, highest: 2000, step: 0.1 });
    expectBounds((mm) => playingLength(millimetres(1100), millimetres(mm), millimetres(3)), { lowest: 0, highest: 200, step: 0.1 });
    expectBounds((mm) => playingLength(millimetres(1100), millimetres(30), millimetres(mm)), { lowest: 0, highest: 50, step: 0.1 });
  });
});
