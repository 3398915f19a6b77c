import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { withoutHead } from "../../../core/club/builtClub.ts";
import { headMassForInertia } from "../../../core/club/headMassForInertia.ts";
import { grams, kilogramSquareCentimetres, millimetres } from "../../../core/quantity/units.ts";
import worked from "../../../fixtures/published/pointMassClubs.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { clubWithOwnInertia, driver, iron, pointClub } from "./checkClubs.ts";
import { refusedOutside } from "./refusals.ts";

const kgCm2 = kilogramSquareCentimetres;

describe(byTable(headMassForInertia, "pointMassClubs", worked), () => {
  it("asks 269.491 g of the 7-iron of points for 2600 kg·cm²", () => {
    const club = pointClub(iron);
    const { pointInertiaKgCm2, headMassG } = worked.inertiaHeadMass;
    const mass = headMassForInertia(kgCm2(pointInertiaKgCm2), club.head, withoutHead(club));
    expect(Math.abs(mass - headMassG)).toBeLessThan(worked.tolerance.headMassG);
  });

  it.each(worked.rows)("finds the head of the $club from its whole inertia", (row) => {
    const club = clubWithOwnInertia(row);
    const mass = headMassForInertia(kgCm2(row.withOwnInertiaKgCm2), club.head, withoutHead(club));
    /** The inertia is printed to 0.05 kg·cm², and a gram at the head is 8.8 or more. */
    expect(Math.abs(mass - club.head.massG)).toBeLessThan(0.05 / 8.7);
  });
});

describe(byLaw(headMassForInertia, "the club with that head has the inertia"), () => {
  it("for any inertia, the head's own and its distance from the shaft counted", () => {
    const club = clubWithOwnInertia(driver);
    fc.assert(
      fc.property(fc.double({ min: 1500, max: 4000, noNaN: true }), (wanted) => {
        const massG = headMassForInertia(kgCm2(wanted), club.head, withoutHead(club));
        expect(assembledClub([...withoutHead(club), { ...club.head, massG: grams(massG) }]).inertiaKgCm2).toBeCloseTo(wanted, 6);
      }),
    );
  });
});

describe("headMassForInertia", () => {
  const { head, ...rest } = clubWithOwnInertia(iron);
  const others = withoutHead(rest);

  it("refuses an inertia and a head that cannot be", () => {
    refusedOutside((value) => headMassForInertia(kgCm2(value), head, others), 1, 20_000);
    refusedOutside((value) => headMassForInertia(kgCm2(2700), { ...head, fromCapMm: millimetres(value) }, others), 400, 2000);
    refusedOutside((value) => headMassForInertia(kgCm2(2700), { ...head, fromAxisMm: millimetres(value) }, others), 0, 200);
    refusedOutside((value) => headMassForInertia(kgCm2(2700), { ...head, ownInertiaKgCm2: kgCm2(value) }, others), 0, 1000);
  });

  it("refuses a part around the head that cannot be", () => {
    const tape = { name: "tape", massG: grams(3), fromCapMm: millimetres(Number.NaN) };
    expect(() => headMassForInertia(kgCm2(2700), head, [tape])).toThrow('"field":"tape fromCapMm"');
  });
});
