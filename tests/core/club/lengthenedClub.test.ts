import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { componentsOf } from "../../../core/club/builtClub.ts";
import type { BuiltClub } from "../../../core/club/clubParts.ts";
import { lengthenedClub } from "../../../core/club/lengthenedClub.ts";
import { grams, kilogramSquareCentimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/lengthChange.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { clubWithOwnInertia, iron, pointClub, rowOf } from "./checkClubs.ts";
import { refusedOutside } from "./refusals.ts";

describe(byTable(lengthenedClub, "lengthChange", published), () => {
  it.each(published.points)("adds $points points to the $club with $changeIn in", ({ club, changeIn, points }) => {
    const before = pointClub(rowOf(club));
    const after = lengthenedClub(before, mmFromInches(changeIn));
    expect(Math.abs(after.swingWeightPoints - assembledClub(componentsOf(before)).swingWeightPoints - points)).toBeLessThan(
      published.tolerance.points,
    );
  });
});

/** A uniform rod as a club: everything else without mass. */
const rodClub = (lengthMm: number, capMm: number): BuiltClub => {
  const massless = { name: "grip", massG: grams(0), fromCapMm: millimetres(600) };
  const massG = lengthMm / 10;
  const own = kilogramSquareCentimetres((massG * lengthMm ** 2) / 12 / 1e5);
  return {
    head: { ...massless, name: "head", fromCapMm: millimetres(lengthMm + capMm) },
    headEnd: [],
    shaft: { name: "shaft", massG: grams(massG), fromCapMm: millimetres(capMm + lengthMm / 2), ownInertiaKgCm2: own },
    shaftLengthMm: millimetres(lengthMm),
    grip: massless,
    capMm: millimetres(capMm),
    buttEnd: [],
  };
};

describe(byLaw(lengthenedClub, "a uniform rod made longer or shorter is the longer or shorter rod"), () => {
  it("in mass, balance, moments and inertia", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 700, max: 1200, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: -76, max: 76, noNaN: true }),
        (lengthMm, capMm, changeMm) => {
          const changed = lengthenedClub(rodClub(lengthMm, capMm), millimetres(changeMm));
          const rod = assembledClub(componentsOf(rodClub(lengthMm + changeMm, capMm)));
          expect(changed.totalMassG).toBeCloseTo(rod.totalMassG, 8);
          expect(changed.balancePointMm).toBeCloseTo(rod.balancePointMm, 8);
          expect(changed.swingWeightInOz).toBeCloseTo(rod.swingWeightInOz, 8);
          expect(changed.inertiaKgCm2).toBeCloseTo(rod.inertiaKgCm2, 8);
        },
      ),
    );
  });
});

describe("lengthenedClub", () => {
  const club = clubWithOwnInertia(iron);

  it("leaves the club as it is without a change", () => {
    expect(lengthenedClub(club, millimetres(0)).inertiaKgCm2).toBeCloseTo(assembledClub(componentsOf(club)).inertiaKgCm2, 9);
  });

  it("moves neither grip nor tape (by hand)", () => {
    const lightGrip = { ...club, grip: { ...club.grip, massG: grams(0) }, buttEnd: [] };
    const gripG = 50 * 4.25 + 3 * 5;
    const [one, other] = [club, lightGrip].map((each) => lengthenedClub(each, mmFromInches(2)).swingWeightInOz * 28.349523125);
    expect((one ?? 0) - (other ?? 0)).toBeCloseTo(gripG - 53 * 14, 8);
  });

  it("refuses changes past 3 in, and clubs that cannot be", () => {
    const half = mmFromInches(0.5);
    refusedOutside((mm) => lengthenedClub(club, millimetres(mm)), -76.2, 76.2);
    refusedOutside((mm) => lengthenedClub({ ...club, head: { ...club.head, fromCapMm: millimetres(mm) } }, half), 450, 2000);
    refusedOutside((mm) => lengthenedClub({ ...club, shaftLengthMm: millimetres(mm) }, half), 300, 1500);
    refusedOutside((mm) => lengthenedClub({ ...club, capMm: millimetres(mm) }, half), 0, 50);
    refusedOutside((massG) => lengthenedClub({ ...club, grip: { ...club.grip, massG: grams(massG) } }, half), 0, 2000);
    expect(() => lengthenedClub({ ...club, buttEnd: [{ name: "tape", massG: grams(-1), fromCapMm: half }] }, half)).toThrow('"field":"tape massG"');
  });
});
