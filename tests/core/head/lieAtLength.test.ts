import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lieAtLength } from "../../../core/head/lieAtLength.ts";
import { degrees, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/lieAtLength.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const rad = (deg: number) => (deg * Math.PI) / 180;
const lie = (lengthMm: number, lieDeg: number, changeMm: number) => lieAtLength(millimetres(lengthMm), degrees(lieDeg), millimetres(changeMm));

describe(byTable(lieAtLength, "lieAtLength", published), () => {
  it.each(published.rows)("takes a lie of $lieDeg° at $lengthIn in to $lieAfterDeg° half an inch longer", (row) => {
    const got = lieAtLength(mmFromInches(row.lengthIn), degrees(row.lieDeg), mmFromInches(row.changeIn));
    expect(Math.abs(got - row.lieAfterDeg)).toBeLessThan(published.tolerance);
  });
});

describe(byLaw(lieAtLength, "the hands stay at their height, and no change of length changes nothing"), () => {
  const lengths = fc.double({ min: 800, max: 1250, noNaN: true });
  const lies = fc.double({ min: 45, max: 70, noNaN: true });

  it("keeps L · sin lie", () => {
    fc.assert(
      fc.property(lengths, lies, fc.double({ min: -40, max: 100, noNaN: true }), (lengthMm, lieDeg, changeMm) => {
        const handHeightMm = lengthMm * Math.sin(rad(lieDeg));
        expect((lengthMm + changeMm) * Math.sin(rad(lie(lengthMm, lieDeg, changeMm)))).toBeCloseTo(handHeightMm, 8);
      }),
    );
  });

  it("leaves the lie", () => {
    fc.assert(
      fc.property(lengths, lies, (lengthMm, lieDeg) => {
        expect(lie(lengthMm, lieDeg, 0)).toBeCloseTo(lieDeg, 9);
      }),
    );
  });
});

describe("lieAtLength", () => {
  it.each([
    ["lengthMm", 200, 2000, (value: number) => lie(value, 60, 0)],
    ["seatedLieDeg", 40, 85, (value: number) => lie(1000, value, 0)],
    ["lengthChangeMm", -150, 150, (value: number) => lie(1250, 45, value)],
  ] as const)("takes a %s from %d to %d and refuses what is past it", (field, min, max, of) => {
    expect(() => of(min)).not.toThrow();
    expect(() => of(max)).not.toThrow();
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN]) {
      expect(() => of(wrong)).toThrow(`"field":"${field}"`);
    }
  });

  it("refuses a club shorter than the hands are high", () => {
    const handHeightMm = 1000 * Math.sin(rad(65));
    expect(lie(1000, 65, handHeightMm - 1000 + 1e-6)).toBeGreaterThan(89.9);
    expect(() => lie(1000, 65, handHeightMm - 1000 - 1e-6)).toThrow('"field":"newLengthMm"');
  });
});
