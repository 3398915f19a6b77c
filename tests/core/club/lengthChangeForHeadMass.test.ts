import fc from "fast-check";
import { polynomialRoot } from "mathjs";
import { describe, expect, it } from "vitest";
import type { KeptQuantity } from "../../../core/club/clubSums.ts";
import { headMassForLengthChange } from "../../../core/club/headMassForLengthChange.ts";
import { lengthChangeForHeadMass } from "../../../core/club/lengthChangeForHeadMass.ts";
import { grams, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/lengthChange.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { clubWithOwnInertia, driver, iron, pointClub } from "./checkClubs.ts";
import { refusedOutside } from "./refusals.ts";

const changeOf = (answer: ReturnType<typeof lengthChangeForHeadMass>): number => (answer.kind === "found" ? answer.lengthChangeMm : Number.NaN);

describe(byTable(lengthChangeForHeadMass, "lengthChange", published), () => {
  it.each(published.rows)("keeps the $kept with $headMassG g at $changeIn in", ({ changeIn, kept, headMassG }) => {
    const change = changeOf(lengthChangeForHeadMass(pointClub(iron), grams(headMassG), kept as KeptQuantity));
    /** Half an inch is 7 g or more, and the mass is printed to a thousandth. */
    expect(Math.abs(change / 25.4 - changeIn)).toBeLessThan(0.001 / 14);
  });
});

describe(byLibrary(lengthChangeForHeadMass, "mathjs", "the moment as a polynomial in the change, its root"), () => {
  it("finds the same change at equal swing weight", () => {
    const club = pointClub(iron);
    const gramsPerMm = club.shaft.massG / club.shaftLengthMm;
    fc.assert(
      fc.property(fc.double({ min: 250, max: 290, noNaN: true }), (headG) => {
        const movingG = headG + club.shaft.massG + 2.5;
        const constant = (headG - 270) * (club.head.fromCapMm - 355.6);
        const roots = polynomialRoot(constant, movingG + gramsPerMm * (club.capMm - 355.6), gramsPerMm / 2);
        const near = Math.min(...roots.map((root) => Math.abs(Number(root))));
        expect(Math.abs(changeOf(lengthChangeForHeadMass(club, grams(headG), "swing-weight")))).toBeCloseTo(near, 6);
      }),
    );
  });
});

describe(byLaw(lengthChangeForHeadMass, "inverse of the head mass for a change of length; a heavier head makes a shorter club"), () => {
  it.each(["swing-weight", "inertia", "point-inertia"] as const)("comes back to the change that kept the %s", (kept) => {
    const club = clubWithOwnInertia(driver);
    fc.assert(
      fc.property(fc.double({ min: -76, max: 76, noNaN: true }), (mm) => {
        const massG = headMassForLengthChange(club, millimetres(mm), kept);
        expect(changeOf(lengthChangeForHeadMass(club, massG, kept))).toBeCloseTo(mm, 6);
        expect((massG - club.head.massG) * mm).toBeLessThanOrEqual(0);
      }),
    );
  });
});

describe("lengthChangeForHeadMass", () => {
  const club = clubWithOwnInertia(iron);

  it.each(["swing-weight", "inertia"] as const)("says which heads 3 in either way would take when no length keeps the %s", (kept) => {
    const edges = [76.2, -76.2].map((mm) => headMassForLengthChange(club, millimetres(mm), kept));
    const [lightestHeadG, heaviestHeadG] = edges;
    const refused = { kind: "refused", code: "no-length-in-reach", lightestHeadG, heaviestHeadG };
    expect(lengthChangeForHeadMass(club, grams((lightestHeadG ?? 0) - 0.01), kept)).toEqual(refused);
    expect(lengthChangeForHeadMass(club, grams((heaviestHeadG ?? 0) + 0.01), kept)).toEqual(refused);
    expect(changeOf(lengthChangeForHeadMass(club, grams((lightestHeadG ?? 0) + 0.01), kept))).toBeCloseTo(76.2, 0);
    expect(changeOf(lengthChangeForHeadMass(club, grams((heaviestHeadG ?? 0) - 0.01), kept))).toBeCloseTo(-76.2, 0);
  });

  it("refuses masses and clubs that cannot be, and what it does not know to keep", () => {
    refusedOutside((massG) => lengthChangeForHeadMass(club, grams(massG), "inertia"), 1, 2000);
    refusedOutside((mm) => lengthChangeForHeadMass({ ...club, shaftLengthMm: millimetres(mm) }, grams(270), "inertia"), 300, 1500);
    expect(() => lengthChangeForHeadMass(club, grams(270), "feel" as KeptQuantity)).toThrow("quantity-unreadable");
  });
});
