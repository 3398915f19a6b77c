import fc from "fast-check";
import { vec2 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { swingWeightOfLieChange } from "../../../core/club/swingWeightOfLieChange.ts";
import { degrees, grams, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/lieChangeSwingWeight.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "./refusals.ts";

const pointsOf = (massG: number, fromAxisMm: number, lieDeg: number) =>
  swingWeightOfLieChange(grams(massG), millimetres(fromAxisMm), degrees(lieDeg));

describe(byTable(swingWeightOfLieChange, "lieChangeSwingWeight", published), () => {
  it.each(published.rows)("is $points points for $lieChangeDeg°", (row) => {
    expect(Math.abs(pointsOf(row.headMassG, row.fromAxisMm, row.lieChangeDeg) - row.points)).toBeLessThan(published.tolerance.points);
  });

  it.each(published.rules)("is about half of the rule of $lieChangeDeg° a point", (row) => {
    const fraction = pointsOf(row.headMassG, row.fromAxisMm, row.lieChangeDeg) / row.points;
    expect(fraction).toBeLessThan(published.tolerance.ruleFraction);
    expect(fraction).toBeGreaterThan(1 - published.tolerance.ruleFraction);
  });
});

describe(byLibrary(swingWeightOfLieChange, "gl-matrix", "the centre turned about its foot on the shaft"), () => {
  it("moves the mass along the shaft by as much, to the second order of the angle", () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (deg) => {
        const turned = vec2.rotate([0, 0] as unknown as vec2, [0, 36], [0, 0], (deg * Math.PI) / 180);
        const points = (270 * turned[0]) / (1.75 * 28.349523125 * 25.4);
        expect(pointsOf(270, 36, deg)).toBeCloseTo(points, 1);
        expect(Math.abs(pointsOf(270, 36, deg) - points)).toBeLessThanOrEqual(0.016 * Math.abs(points) + 1e-12);
      }),
    );
  });
});

describe(byLaw(swingWeightOfLieChange, "upright and flat mirror; twice the mass or the distance is twice the points"), () => {
  it("holds", () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 400, noNaN: true }), fc.double({ min: 1, max: 50, noNaN: true }), (massG, mm) => {
        expect(pointsOf(massG, mm, 2)).toBeCloseTo(-pointsOf(massG, mm, -2), 12);
        expect(pointsOf(2 * massG, mm, -2)).toBeCloseTo(pointsOf(massG, 2 * mm, -2), 12);
      }),
    );
  });
});

describe("swingWeightOfLieChange", () => {
  it("refuses what no head has and no press bends", () => {
    refusedOutside((massG) => pointsOf(massG, 36, 2), 1, 2000);
    refusedOutside((mm) => pointsOf(270, mm, 2), 0, 200);
    refusedOutside((deg) => pointsOf(270, 36, deg), -10, 10);
  });
});
