import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { headMassForSwingWeight } from "../../../core/club/headMassForSwingWeight.ts";
import { grams, millimetres, mmFromInches, swingWeightPoints } from "../../../core/quantity/units.ts";
import worked from "../../../fixtures/published/pointMassClubs.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { componentsOfRow, iron } from "./checkClubs.ts";
import { refusedOutside } from "./refusals.ts";

const around = componentsOfRow(iron).filter(({ name }) => name !== "head");

describe(byTable(headMassForSwingWeight, "pointMassClubs", worked), () => {
  it.each(worked.ironHeadMasses)("asks $headMassG g of the 7-iron for $wantedPoints points", ({ wantedPoints, headMassG }) => {
    const mass = headMassForSwingWeight(swingWeightPoints(wantedPoints), mmFromInches(36.85), around);
    expect(Math.abs(mass - headMassG)).toBeLessThan(worked.tolerance.headMassG);
  });
});

describe(byLaw(headMassForSwingWeight, "the club with that head has the swing weight"), () => {
  it("for any swing weight and place", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 12, noNaN: true }), fc.double({ min: 850, max: 1150, noNaN: true }), (points, at) => {
        const massG = headMassForSwingWeight(swingWeightPoints(points), millimetres(at), around);
        expect(assembledClub([...around, { name: "head", massG, fromCapMm: millimetres(at) }]).swingWeightPoints).toBeCloseTo(points, 6);
      }),
    );
  });
});

describe("headMassForSwingWeight", () => {
  const at = mmFromInches(36.85);

  it("refuses a head that is not well past the fulcrum", () => {
    refusedOutside((mm) => headMassForSwingWeight(swingWeightPoints(2), millimetres(mm), around), 400, 2000);
  });

  it("refuses a swing weight past any scale", () => {
    refusedOutside((points) => headMassForSwingWeight(swingWeightPoints(points), at, around), -200, 200);
  });

  it("refuses a part around the head that cannot be", () => {
    expect(() => headMassForSwingWeight(swingWeightPoints(2), at, [{ name: "tape", massG: grams(Number.NaN), fromCapMm: at }])).toThrow(
      '"field":"tape massG"',
    );
  });

  it("takes a head with nothing around it", () => {
    expect(headMassForSwingWeight(swingWeightPoints(0), mmFromInches(44), [])).toBeCloseTo((213.5 * 28.349523125) / 30, 9);
  });
});
