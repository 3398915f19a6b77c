import fc from "fast-check";
import { add, multiply, subtract, type Unit, unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { componentsOf } from "../../../core/club/builtClub.ts";
import type { ClubComponent } from "../../../core/club/clubComponent.ts";
import { grams, kilogramSquareCentimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import measured from "../../../fixtures/published/measuredSwingWeights.json" with { type: "json" };
import worked from "../../../fixtures/published/pointMassClubs.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { clubWithOwnInertia, componentsOfRow, driver, someComponents } from "./checkClubs.ts";
import { refusedOutside } from "./refusals.ts";

const lump = (massG: number, fromCapMm: number): ClubComponent => ({ name: "club", massG: grams(massG), fromCapMm: millimetres(fromCapMm) });

describe(byTable(assembledClub, "pointMassClubs", worked), () => {
  it.each(worked.rows)("sums the $club", (row) => {
    const club = assembledClub(componentsOfRow(row));
    expect(club.totalMassG).toBeCloseTo(row.totalMassG, 9);
    expect(Math.abs(club.balancePointMm / 25.4 - row.balancePointIn)).toBeLessThan(worked.tolerance.balancePointIn);
    expect(Math.abs(club.swingWeightPoints - row.swingWeightPoints)).toBeLessThan(worked.tolerance.points);
    expect(Math.abs(club.swingWeightInOz - row.swingWeightInOz)).toBeLessThan(worked.tolerance.inOz);
    expect(Math.abs(club.oldScaleInOz - row.oldScaleInOz)).toBeLessThan(worked.tolerance.inOz);
    expect(Math.abs(club.pointInertiaKgCm2 - row.inertiaKgCm2)).toBeLessThan(worked.tolerance.inertiaKgCm2);
    expect(club.inertiaKgCm2).toBe(club.pointInertiaKgCm2);
  });

  it.each(worked.rows)("adds the own inertia of shaft, head and grip of the $club", (row) => {
    const club = assembledClub(componentsOf(clubWithOwnInertia(row)));
    expect(Math.abs(club.inertiaKgCm2 - row.withOwnInertiaKgCm2)).toBeLessThan(worked.tolerance.withOwnInertiaKgCm2);
    expect(Math.abs(club.pointInertiaKgCm2 - row.inertiaKgCm2)).toBeLessThan(worked.tolerance.inertiaKgCm2);
  });
});

describe(byTable(assembledClub, "measuredSwingWeights", measured), () => {
  it("gives the moment of a club of 349.8 g that balances at 824 mm", () => {
    const { totalMassG, balancePointMm, momentNm } = measured.moment;
    const newtonMetres = assembledClub([lump(totalMassG, balancePointMm)]).swingWeightInOz * 0.028349523125 * 9.80665 * 0.0254;
    expect(Math.abs(newtonMetres / momentNm - 1)).toBeLessThan(measured.tolerance.momentFraction);
  });

  it.each(measured.rows)("reads $points points at $totalMassG g and $balancePointIn in", (row) => {
    const club = assembledClub([lump(row.totalMassG, mmFromInches(row.balancePointIn))]);
    expect(Math.abs(club.swingWeightPoints - row.points)).toBeLessThan(measured.tolerance.points);
  });

  it.each(measured.misread.rows)("is off by $points points when $massOffG g of mass and $balanceOffIn in of balance are misread", (row) => {
    const { totalMassG, balancePointIn } = measured.misread;
    const read = (massG: number, balanceIn: number) => assembledClub([lump(massG, mmFromInches(balanceIn))]).swingWeightPoints;
    const off = read(totalMassG + row.massOffG, balancePointIn + row.balanceOffIn) - read(totalMassG, balancePointIn);
    expect(Math.abs(off - row.points)).toBeLessThan(row.tolerance);
  });
});

describe(byLibrary(assembledClub, "mathjs", "masses and places multiplied and converted as units"), () => {
  it("comes to the same moments about 14 and 12 in", () => {
    const about = (fulcrumIn: number, parts: readonly ClubComponent[]) =>
      parts
        .map(({ massG, fromCapMm }) => multiply(unit(massG, "g"), subtract(unit(fromCapMm, "mm"), unit(fulcrumIn, "inch"))) as Unit)
        .reduce((total, moment) => add(total, moment))
        .toNumber("ounce inch");
    fc.assert(
      fc.property(someComponents, (parts) => {
        const club = assembledClub(parts);
        expect(club.swingWeightInOz).toBeCloseTo(about(14, parts), 8);
        expect(club.oldScaleInOz).toBeCloseTo(about(12, parts), 8);
      }),
      { numRuns: 30 },
    );
  });
});

describe(byLaw(assembledClub, "masses, moments and inertia of parts add, in any order"), () => {
  it("is the sum over two lots of parts", () => {
    fc.assert(
      fc.property(someComponents, someComponents, (one, other) => {
        const [whole, first, second] = [assembledClub([...other, ...one]), assembledClub(one), assembledClub(other)];
        expect(whole.totalMassG).toBeCloseTo(first.totalMassG + second.totalMassG, 9);
        expect(whole.swingWeightInOz).toBeCloseTo(first.swingWeightInOz + second.swingWeightInOz, 8);
        expect(whole.inertiaKgCm2).toBeCloseTo(first.inertiaKgCm2 + second.inertiaKgCm2, 7);
        expect(whole.pointInertiaKgCm2).toBeCloseTo(first.pointInertiaKgCm2 + second.pointInertiaKgCm2, 7);
        expect(whole.balancePointMm * whole.totalMassG).toBeCloseTo(
          first.balancePointMm * first.totalMassG + second.balancePointMm * second.totalMassG,
          5,
        );
      }),
    );
  });
});

describe(
  byLaw(assembledClub, "parallel axes: one mass at the balance point has the moment but never more inertia; points never more than bodies"),
  () => {
    it("holds for any parts", () => {
      fc.assert(
        fc.property(someComponents, (parts) => {
          const club = assembledClub(parts);
          const point = assembledClub([lump(club.totalMassG, club.balancePointMm)]);
          expect(point.swingWeightPoints).toBeCloseTo(club.swingWeightPoints, 6);
          expect(point.oldScaleInOz).toBeCloseTo(club.oldScaleInOz, 6);
          expect(club.pointInertiaKgCm2).toBeGreaterThanOrEqual(point.inertiaKgCm2 - 1e-6);
          expect(club.inertiaKgCm2).toBeGreaterThanOrEqual(club.pointInertiaKgCm2);
        }),
      );
    });

    it("puts a mass off the axis at its distance from the cap (Pythagoras, 3 4 5)", () => {
      const off = assembledClub([{ ...lump(100, 400), fromAxisMm: millimetres(150) }]);
      expect(off.inertiaKgCm2).toBeCloseTo((0.1 * (40 ** 2 + 15 ** 2)) / 1, 9);
      expect(off.pointInertiaKgCm2).toBeCloseTo(0.1 * 40 ** 2, 9);
    });
  },
);

describe("assembledClub", () => {
  const [first, ...rest] = componentsOfRow(driver);
  const withFirst = (change: Partial<ClubComponent>) => assembledClub([...rest, { ...lump(200, 1130), ...first, ...change }]);

  it("refuses masses, places and inertia that cannot be", () => {
    refusedOutside((massG) => withFirst({ massG: grams(massG) }), 0, 2000);
    refusedOutside((mm) => withFirst({ fromCapMm: millimetres(mm) }), 0, 2000);
    refusedOutside((mm) => withFirst({ fromAxisMm: millimetres(mm) }), 0, 200);
    refusedOutside((kgCm2) => withFirst({ ownInertiaKgCm2: kilogramSquareCentimetres(kgCm2) }), 0, 1000);
  });

  it("names the part and the quantity at fault", () => {
    expect(() => assembledClub([{ ...lump(-1, 100), name: "tape" }])).toThrow('"field":"tape massG"');
    expect(() => assembledClub([{ ...lump(1, -1), name: "tape" }])).toThrow('"field":"tape fromCapMm"');
    expect(() => assembledClub([{ ...lump(1, 1), name: "tape", fromAxisMm: millimetres(-1) }])).toThrow('"field":"tape fromAxisMm"');
    expect(() => assembledClub([{ ...lump(1, 1), name: "tape", ownInertiaKgCm2: kilogramSquareCentimetres(-1) }])).toThrow(
      '"field":"tape ownInertiaKgCm2"',
    );
  });

  it("refuses a club without mass or past 5 kg", () => {
    expect(() => assembledClub([])).toThrow('"field":"totalMassG"');
    expect(() => assembledClub([lump(0, 100)])).toThrow('"field":"totalMassG"');
    expect(() => assembledClub([lump(2000, 100), lump(2000, 100), lump(1001, 100)])).toThrow('"field":"totalMassG"');
    expect(assembledClub([lump(2000, 100), lump(2000, 100), lump(1000, 100)]).totalMassG).toBe(5000);
  });

  it("refuses more than 100 parts", () => {
    const parts = Array.from({ length: 100 }, () => lump(1, 100));
    expect(assembledClub(parts).totalMassG).toBe(100);
    expect(() => assembledClub([...parts, lump(1, 100)])).toThrow("list-of-wrong-size");
  });
});
