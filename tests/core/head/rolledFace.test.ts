import fc from "fast-check";
import { expm, type Matrix, matrix, multiply } from "mathjs";
import { describe, expect, it } from "vitest";
import { bondedAttitude } from "../../../core/head/attitudeOf.ts";
import { rolledFace } from "../../../core/head/rolledFace.ts";
import { degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/rolledFace.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { bareHead, between } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const rad = (deg: number) => (deg * Math.PI) / 180;
const deg = (radians: number) => (radians * 180) / Math.PI;
const someRolls = [between(5, 60), between(54, 64), between(-20, 20)] as const;

/** The roll as the exponential of the matrix that crosses with the shaft. */
function byExponential(loft: number, lie: number, roll: number) {
  const [y, z] = [Math.cos(rad(lie)) * rad(-roll), Math.sin(rad(lie)) * rad(-roll)];
  const crossing = matrix([
    [0, -z, y],
    [z, 0, 0],
    [-y, 0, 0],
  ]);
  const rolled = multiply(expm(crossing), matrix([Math.cos(rad(loft)), 0, Math.sin(rad(loft))])) as Matrix<number>;
  return { loftDeg: deg(Math.asin(rolled.get([2]))), faceDeg: deg(Math.atan2(-rolled.get([1]), rolled.get([0]))) };
}

describe(byTable(rolledFace, "rolledFace", published), () => {
  it.each(published.rows)("opens a face by a roll of $rollDeg°", ({ rollDeg, ...wanted }) => {
    const got = rolledFace(degrees(published.squaredLoftDeg), degrees(published.heldLieDeg), degrees(rollDeg));
    expect(Math.abs(got.rolledLoftDeg - wanted.rolledLoftDeg)).toBeLessThan(published.tolerance);
    expect(Math.abs(got.rolledFaceDeg - wanted.rolledFaceDeg)).toBeLessThan(published.tolerance);
  });
});

describe(byLibrary(rolledFace, "mathjs", "the exponential of a skew matrix"), () => {
  it("agrees to 1e-9°", () => {
    fc.assert(
      fc.property(...someRolls, (loft, lie, roll) => {
        const [got, wanted] = [rolledFace(degrees(loft), degrees(lie), degrees(roll)), byExponential(loft, lie, roll)];
        expect(Math.abs(got.rolledLoftDeg - wanted.loftDeg)).toBeLessThan(1e-9);
        expect(Math.abs(got.rolledFaceDeg - wanted.faceDeg)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe(byLaw(rolledFace, "a roll leaves the squared loft alone"), () => {
  it("squares back to the loft it started from", () => {
    fc.assert(
      fc.property(between(5, 60), between(54, 64), between(-12, 12), (loft, lie, roll) => {
        const { rolledLoftDeg, rolledFaceDeg } = rolledFace(degrees(loft), degrees(lie), degrees(roll));
        fc.pre(Math.abs(rolledFaceDeg) < 20);
        const back = bondedAttitude(bareHead({ soledLoftDeg: rolledLoftDeg, soledFaceDeg: rolledFaceDeg, designLieDeg: lie }));
        expect(back.squaredLoftDeg).toBeCloseTo(loft, 9);
      }),
    );
  });
});

describe("rolledFace", () => {
  const roll = (loft: number, lie: number, by: number) => rolledFace(degrees(loft), degrees(lie), degrees(by));

  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([degrees(10), degrees(58), degrees(2)] as const)) {
      expect(() => rolledFace(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it("takes a roll up to 45° either way and nothing past that", () => {
    expect(roll(10, 58, 45).rolledFaceDeg).toBeGreaterThan(30);
    expect(roll(10, 58, -45).rolledFaceDeg).toBeLessThan(-30);
    expect(() => roll(10, 58, 45.001)).toThrow('"field":"rollDeg"');
    expect(() => roll(10, 58, -45.001)).toThrow('"field":"rollDeg"');
  });

  it("names the loft or lie it refuses", () => {
    expect(() => roll(75.001, 58, 1)).toThrow('"field":"squaredLoftDeg"');
    expect(() => roll(10, 39.999, 1)).toThrow('"field":"heldLieDeg"');
  });
});
