import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bareCutLength } from "../../../core/club/bareCutLength.ts";
import { trimmedShaft } from "../../../core/club/trimmedShaft.ts";
import { millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/shaftTrimming.json" with { type: "json" };

fc.configureGlobal({ seed: 20270503 });

describe(`bareCutLength (${published.source})`, () => {
  it.each(published.cuts)("cuts $cutIn in for a club of $lengthIn in", ({ lengthIn, boreIn, capIn, cutIn }) => {
    const cut = bareCutLength(mmFromInches(lengthIn), mmFromInches(boreIn), mmFromInches(capIn));
    expect(Math.abs(cut / 25.4 - cutIn)).toBeLessThan(published.tolerance.cutIn);
  });

  it("makes the club a quarter inch longer when the same shaft stands a quarter inch higher in the bore", () => {
    const cut = (lengthIn: number, boreIn: number) => bareCutLength(mmFromInches(lengthIn), mmFromInches(boreIn), mmFromInches(0.125));
    expect(cut(45.25, 1.5)).toBeCloseTo(cut(45, 1.25), 9);
  });

  it.each([Number.NaN, 10])("refuses a playing length of %d mm", (mm) => {
    expect(() => bareCutLength(millimetres(mm), millimetres(31.75), millimetres(3))).toThrow("quantity-out-of-range");
  });
});

describe(`trimmedShaft (${published.source})`, () => {
  it.each(published.rows)("leaves $massG g of $rawMassG g", (row) => {
    const raw = { rawLengthMm: row.rawIn * 25.4, rawMassG: row.rawMassG, balanceFromTipMm: row.balanceFromTipIn * 25.4 };
    const shaft = trimmedShaft(raw, mmFromInches(row.tipIn), mmFromInches(row.buttIn));
    const off = [
      shaft.massG - row.massG,
      shaft.lengthMm / 25.4 - row.lengthIn,
      shaft.balanceFromTipMm / 25.4 - row.trimmedFromTipIn,
      shaft.balanceFromButtMm / 25.4 - row.trimmedFromButtIn,
    ];
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(published.tolerance.trimmed);
  });

  it("keeps mass, balance and inertia of a uniform rod (m·L²/12) as a law", () => {
    fc.assert(
      fc.property(fc.double({ min: 40, max: 130, noNaN: true }), fc.double({ min: 0, max: 150, noNaN: true }), (rawMassG, trimMm) => {
        const shaft = trimmedShaft({ rawLengthMm: 1000, rawMassG, balanceFromTipMm: 500 }, millimetres(trimMm), millimetres(trimMm / 2));
        const lengthMm = 1000 - 1.5 * trimMm;
        expect(shaft.massG).toBeCloseTo((rawMassG * lengthMm) / 1000, 6);
        expect(shaft.balanceFromTipMm).toBeCloseTo(lengthMm / 2, 6);
        expect(shaft.ownInertiaKgCm2).toBeCloseTo((shaft.massG * lengthMm ** 2) / 12 / 1e5, 6);
      }),
    );
  });

  it("puts shaft and cut-offs together again (mass and moment are kept)", () => {
    const raw = { rawLengthMm: 1168.4, rawMassG: 65, balanceFromTipMm: 609.6 };
    const kept = trimmedShaft(raw, millimetres(12), millimetres(40));
    const tip = trimmedShaft(raw, millimetres(0), millimetres(1168.4 - 12));
    const butt = trimmedShaft(raw, millimetres(1168.4 - 40), millimetres(0));
    const moment = kept.massG * (12 + kept.balanceFromTipMm) + tip.massG * tip.balanceFromTipMm + butt.massG * (1128.4 + butt.balanceFromTipMm);
    expect(kept.massG + tip.massG + butt.massG).toBeCloseTo(65, 9);
    expect(moment).toBeCloseTo(65 * 609.6, 6);
  });

  it.each([300, 900, Number.NaN])("refuses a balance of %d mm on a shaft of 1200 mm", (balanceFromTipMm) => {
    expect(() => trimmedShaft({ rawLengthMm: 1200, rawMassG: 60, balanceFromTipMm }, millimetres(0), millimetres(0))).toThrow(
      /balance-outside-model|quantity-out-of-range/,
    );
  });

  it("refuses to cut away the whole shaft", () => {
    const raw = { rawLengthMm: 1200, rawMassG: 60, balanceFromTipMm: 610 };
    expect(() => trimmedShaft(raw, millimetres(600), millimetres(600))).toThrow("quantity-out-of-range");
  });
});
