import fc from "fast-check";
import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { inertiaFromPendulum, pendulumPeriod } from "../../../core/club/inertiaFromPendulum.ts";
import { grams, kilogramSquareCentimetres, millimetres, seconds } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/clubPendulum.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "./refusals.ts";

const period = (kgCm2: number, massG: number, mm: number) => pendulumPeriod(kilogramSquareCentimetres(kgCm2), grams(massG), millimetres(mm));
const inertia = (s: number, massG: number, mm: number) => inertiaFromPendulum(seconds(s), grams(massG), millimetres(mm));

describe(byTable(pendulumPeriod, "clubPendulum", published), () => {
  it.each(published.rows)("swings the $club in $periodS s", ({ inertiaKgM2, massKg, balanceM, periodS }) => {
    expect(Math.abs(period(inertiaKgM2 * 1e4, massKg * 1e3, balanceM * 1e3) - periodS)).toBeLessThan(published.tolerance.periodS);
  });
});

describe(byTable(inertiaFromPendulum, "clubPendulum", published), () => {
  it.each(published.rows)("finds the inertia of the $club from $periodS s", ({ inertiaKgM2, massKg, balanceM, periodS }) => {
    const fraction = inertia(periodS, massKg * 1e3, balanceM * 1e3) / (inertiaKgM2 * 1e4);
    expect(Math.abs(fraction - 1)).toBeLessThan(published.tolerance.inertiaFraction);
  });
});

describe(byLaw(pendulumPeriod, "a mass on a thread and a rod hung at its end: 2π·√(L/g) and 2π·√(2L/3g)"), () => {
  it("holds for any length", () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 1200, noNaN: true }), (mm) => {
        const [metres, massG] = [mm / 1000, 300];
        const threadKgCm2 = (massG / 1000) * (mm / 10) ** 2;
        expect(period(threadKgCm2, massG, mm)).toBeCloseTo(2 * Math.PI * Math.sqrt(metres / 9.80665), 9);
        expect(period(threadKgCm2 / 3, massG, mm / 2)).toBeCloseTo(2 * Math.PI * Math.sqrt((2 * metres) / (3 * 9.80665)), 9);
      }),
    );
  });
});

describe(byLibrary(inertiaFromPendulum, "mathjs", "the same quantities multiplied as units"), () => {
  it("comes to the same inertia, and back to the period", () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 3, noNaN: true }), fc.double({ min: 600, max: 900, noNaN: true }), (s, mm) => {
        const moment = unit(320, "g").multiply(unit(9.80665, "m/s^2")).multiply(unit(mm, "mm"));
        const wanted = moment.multiply(unit(s, "s")).multiply(unit(s, "s"));
        expect(inertia(s, 320, mm)).toBeCloseTo(wanted.toNumber("kg cm^2") / (4 * Math.PI ** 2), 6);
        expect(period(inertia(s, 320, mm), 320, mm)).toBeCloseTo(s, 12);
      }),
      { numRuns: 30 },
    );
  });
});

describe("inertiaFromPendulum", () => {
  it("refuses what no club does", () => {
    refusedOutside((s) => inertia(s, 430, 1), 0.1, 10);
    refusedOutside((massG) => inertia(1.9, massG, 715), 1, 5000);
    refusedOutside((mm) => inertia(10, 430, mm), 1, 2000);
  });

  it("refuses a swing faster than all of the mass on a thread: 2π·√(BP/g)", () => {
    const thread = 2 * Math.PI * Math.sqrt(0.715 / 9.80665);
    expect(() => inertia(thread * 1.0001, 430, 715)).not.toThrow();
    expect(() => inertia(thread * 0.9999, 430, 715)).toThrow('"field":"inertiaKgCm2","unit":"kg·cm²"');
  });
});

describe("pendulumPeriod", () => {
  it("refuses what no club is", () => {
    refusedOutside((kgCm2) => period(kgCm2, 430, 10), 1, 20_000);
    refusedOutside((massG) => period(20_000, massG, 100), 1, 5000);
    refusedOutside((mm) => period(20_000, 430, mm), 1, 2000);
  });

  it("refuses less inertia than all of the mass at the balance point: M·BP²", () => {
    const pointKgCm2 = 0.43 * 71.5 ** 2;
    expect(() => period(pointKgCm2 * 1.0001, 430, 715)).not.toThrow();
    expect(() => period(pointKgCm2 * 0.9999, 430, 715)).toThrow('"field":"inertiaKgCm2","unit":"kg·cm²"');
  });
});
