import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { componentsOf } from "../../../core/club/builtClub.ts";
import type { KeptQuantity } from "../../../core/club/clubSums.ts";
import { headMassForLengthChange } from "../../../core/club/headMassForLengthChange.ts";
import { lengthenedClub } from "../../../core/club/lengthenedClub.ts";
import { millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/lengthChange.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { clubWithOwnInertia, driver, iron, pointClub } from "./checkClubs.ts";
import { refusedOutside } from "./refusals.ts";

describe(byTable(headMassForLengthChange, "lengthChange", published), () => {
  it.each(published.rows)("keeps the $kept at $changeIn in with $headMassG g", ({ changeIn, kept, headMassG }) => {
    const mass = headMassForLengthChange(pointClub(iron), mmFromInches(changeIn), kept as KeptQuantity);
    expect(Math.abs(mass - headMassG)).toBeLessThan(published.tolerance.headMassG);
  });

  it("keeps the inertia of points by the same mass, whether own inertia is counted or there is none", () => {
    const change = mmFromInches(0.5);
    expect(headMassForLengthChange(pointClub(iron), change, "inertia")).toBeCloseTo(
      headMassForLengthChange(pointClub(iron), change, "point-inertia") - ((105 / 35.9) * 0.5 * 1.27 ** 2) / 12 / (37.35 * 2.54) ** 2,
      6,
    );
  });
});

describe(byLaw(headMassForLengthChange, "the longer club with that head has what was kept"), () => {
  const quantities = { "swing-weight": "swingWeightPoints", inertia: "inertiaKgCm2", "point-inertia": "pointInertiaKgCm2" } as const;

  it.each(["swing-weight", "inertia", "point-inertia"] as const)("keeps the %s", (kept) => {
    const club = clubWithOwnInertia(driver);
    fc.assert(
      fc.property(fc.double({ min: -76, max: 76, noNaN: true }), (mm) => {
        const massG = headMassForLengthChange(club, millimetres(mm), kept);
        const changed = lengthenedClub({ ...club, head: { ...club.head, massG } }, millimetres(mm));
        expect(changed[quantities[kept]]).toBeCloseTo(assembledClub(componentsOf(club))[quantities[kept]], 7);
      }),
    );
  });
});

describe("headMassForLengthChange", () => {
  const club = clubWithOwnInertia(iron);

  it("refuses changes past 3 in, clubs that cannot be, and what it does not know to keep", () => {
    refusedOutside((mm) => headMassForLengthChange(club, millimetres(mm), "inertia"), -76.2, 76.2);
    const capAt = (mm: number) => headMassForLengthChange({ ...club, capMm: millimetres(mm) }, millimetres(10), "swing-weight");
    refusedOutside(capAt, 0, 50);
    expect(() => headMassForLengthChange(club, millimetres(10), "feel" as KeptQuantity)).toThrow("quantity-unreadable");
  });
});
