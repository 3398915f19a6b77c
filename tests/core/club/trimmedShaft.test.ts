import fc from "fast-check";
import { lusolve } from "mathjs";
import { describe, expect, it } from "vitest";
import { linearDensity } from "../../../core/club/linearDensity.ts";
import { trimmedShaft } from "../../../core/club/trimmedShaft.ts";
import { grams, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/shaftTrimming.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { expectBounds } from "./refusals.ts";

const raw = { rawLengthMm: mmFromInches(46), rawMassG: grams(65), balanceFromTipMm: mmFromInches(24) };
const trimmed = (shaft: typeof raw, tipMm: number, buttMm: number) => trimmedShaft(shaft, millimetres(tipMm), millimetres(buttMm));

const anyShaft = fc.record({
  lengthMm: fc.double({ min: 900, max: 1250, noNaN: true }),
  massG: fc.double({ min: 40, max: 130, noNaN: true }),
  balanceShare: fc.double({ min: 0.36, max: 0.64, noNaN: true }),
});

/** a and b of the density from its two conditions, mass and moment, as a linear system. */
function densityByLibrary(lengthMm: number, massG: number, balanceMm: number): readonly [number, number] {
  const L = lengthMm;
  const [[a = Number.NaN] = [], [b = Number.NaN] = []] = lusolve(
    [
      [1, 1 / 2],
      [1 / 2, 1 / 3],
    ],
    [massG / L, (massG * balanceMm) / L ** 2],
  ) as number[][];
  return [a, b / L];
}

/** Simpson's rule, exact for the cubics that mass, moment and inertia of an even density are. */
const simpson = (of: (u: number) => number, from: number, to: number) => ((to - from) / 6) * (of(from) + 4 * of((from + to) / 2) + of(to));

describe(byTable(trimmedShaft, "shaftTrimming", published), () => {
  it.each(published.rows)("leaves $massG g of $rawMassG g", (row) => {
    const shaft = trimmedShaft(
      { rawLengthMm: mmFromInches(row.rawIn), rawMassG: grams(row.rawMassG), balanceFromTipMm: mmFromInches(row.balanceFromTipIn) },
      mmFromInches(row.tipIn),
      mmFromInches(row.buttIn),
    );
    const off = [
      shaft.massG - row.massG,
      shaft.lengthMm / 25.4 - row.lengthIn,
      shaft.balanceFromTipMm / 25.4 - row.trimmedFromTipIn,
      shaft.balanceFromButtMm / 25.4 - row.trimmedFromButtIn,
    ];
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(published.tolerance.trimmed);
  });
});

describe(byLibrary(linearDensity, "mathjs", "the two conditions of mass and moment solved as a linear system"), () => {
  it("has the same density at tip and butt", () => {
    fc.assert(
      fc.property(anyShaft, ({ lengthMm, massG, balanceShare }) => {
        const density = linearDensity({
          rawLengthMm: millimetres(lengthMm),
          rawMassG: grams(massG),
          balanceFromTipMm: millimetres(balanceShare * lengthMm),
        });
        const [a, b] = densityByLibrary(lengthMm, massG, balanceShare * lengthMm);
        expect(Math.abs(density.a - a)).toBeLessThan(1e-12);
        expect(Math.abs((density.b - b) * lengthMm)).toBeLessThan(1e-12);
      }),
    );
  });
});

describe(byLibrary(trimmedShaft, "mathjs", "density solved as a linear system, moments by Simpson's rule"), () => {
  it("leaves the same mass, balance and inertia", () => {
    fc.assert(
      fc.property(anyShaft, fc.double({ min: 0, max: 120, noNaN: true }), fc.double({ min: 0, max: 120, noNaN: true }), (some, tipMm, buttMm) => {
        const { lengthMm, massG, balanceShare } = some;
        const [a, b] = densityByLibrary(lengthMm, massG, balanceShare * lengthMm);
        const moment = (n: number) => simpson((u) => (a + b * u) * u ** n, tipMm, lengthMm - buttMm);
        const centreMm = moment(1) / moment(0);
        const inertia = (moment(2) - moment(0) * centreMm ** 2) / 1e5;
        const shaft = trimmed(
          { rawLengthMm: millimetres(lengthMm), rawMassG: grams(massG), balanceFromTipMm: millimetres(balanceShare * lengthMm) },
          tipMm,
          buttMm,
        );
        expect(Math.abs(shaft.massG / moment(0) - 1)).toBeLessThan(1e-9);
        expect(Math.abs(shaft.balanceFromTipMm / (centreMm - tipMm) - 1)).toBeLessThan(1e-9);
        expect(Math.abs(shaft.ownInertiaKgCm2 / inertia - 1)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe(byLaw(trimmedShaft, "a uniform rod stays one: mass by length, balance in the middle, m·L²/12"), () => {
  it("keeps mass, balance and inertia of a uniform rod", () => {
    fc.assert(
      fc.property(fc.double({ min: 40, max: 130, noNaN: true }), fc.double({ min: 0, max: 150, noNaN: true }), (rawMassG, trimMm) => {
        const rod = { rawLengthMm: millimetres(1000), rawMassG: grams(rawMassG), balanceFromTipMm: millimetres(500) };
        const shaft = trimmed(rod, trimMm, trimMm / 2);
        const lengthMm = 1000 - 1.5 * trimMm;
        expect(shaft.massG).toBeCloseTo((rawMassG * lengthMm) / 1000, 6);
        expect(shaft.balanceFromTipMm).toBeCloseTo(lengthMm / 2, 6);
        expect(shaft.ownInertiaKgCm2).toBeCloseTo((shaft.massG * lengthMm ** 2) / 12 / 1e5, 6);
      }),
    );
  });
});

describe(byLaw(trimmedShaft, "shaft and cut-offs keep mass and moment"), () => {
  it("puts shaft and cut-offs together again", () => {
    const lengthMm = raw.rawLengthMm;
    const kept = trimmed(raw, 12, 40);
    const tip = trimmed(raw, 0, lengthMm - 12);
    const butt = trimmed(raw, lengthMm - 40, 0);
    const moment =
      kept.massG * (12 + kept.balanceFromTipMm) + tip.massG * tip.balanceFromTipMm + butt.massG * (lengthMm - 40 + butt.balanceFromTipMm);
    expect(kept.massG + tip.massG + butt.massG).toBeCloseTo(65, 9);
    expect(moment).toBeCloseTo(65 * 609.6, 6);
  });

  it("leaves a shaft as it is when nothing is cut", () => {
    const shaft = trimmed(raw, 0, 0);
    expect([shaft.lengthMm, shaft.massG, shaft.balanceFromTipMm]).toEqual([
      raw.rawLengthMm,
      expect.closeTo(65, 9),
      expect.closeTo(raw.balanceFromTipMm, 9),
    ]);
    expect(shaft.balanceFromButtMm).toBeCloseTo(raw.rawLengthMm - raw.balanceFromTipMm, 9);
  });
});

describe("linearDensity", () => {
  it.each([400, 800])("refuses a balance of %d mm on a shaft of 1200 mm, where one end would weigh nothing", (balanceMm) => {
    const at = (mm: number) => linearDensity({ rawLengthMm: millimetres(1200), rawMassG: grams(60), balanceFromTipMm: millimetres(mm) });
    expect(() => at(balanceMm)).toThrow("balance-outside-model");
    expect(() => at(balanceMm + Math.sign(600 - balanceMm) * 1e-6)).not.toThrow();
  });

  it("tells between which places a balance may lie", () => {
    expect(() => linearDensity({ rawLengthMm: millimetres(1200), rawMassG: grams(60), balanceFromTipMm: millimetres(900) })).toThrow(
      /"minMm":400,"maxMm":800/,
    );
  });
});

describe("trimmedShaft", () => {
  it("refuses a shaft that cannot be", () => {
    const half = (mm: number) => ({ rawLengthMm: millimetres(mm), rawMassG: grams(65), balanceFromTipMm: millimetres(mm / 2) });
    expectBounds((mm) => trimmed(half(mm), 0, 0), { lowest: 1, highest: 2000, step: 0.1 });
    expectBounds((g) => trimmed({ ...raw, rawMassG: grams(g) }, 0, 0), { lowest: 1e-6, highest: 500, step: 0.1 });
    expect(() => trimmed({ ...raw, rawMassG: grams(0) }, 0, 0)).toThrow("quantity-out-of-range");
    expectBounds((mm) => trimmed({ ...raw, balanceFromTipMm: millimetres(mm) }, 0, 0), { step: 0.1 });
  });

  it("refuses a trim below nothing, past the end, or of the whole shaft", () => {
    expectBounds((mm) => trimmed(raw, mm, 0), { lowest: 0, step: 0.1 });
    expectBounds((mm) => trimmed(raw, 0, mm), { lowest: 0, step: 0.1 });
    expect(() => trimmed(raw, raw.rawLengthMm + 1, 0)).toThrow(/tipTrimMm/);
    expect(() => trimmed(raw, 0, raw.rawLengthMm + 1)).toThrow(/buttTrimMm/);
    expect(() => trimmed(raw, raw.rawLengthMm / 2, raw.rawLengthMm / 2)).toThrow(/trimmedLengthMm/);
    expect(trimmed(raw, 584.1, 584.1).lengthMm).toBeCloseTo(0.2, 6);
  });
});
