import { describe, expect, it } from "vitest";
import { defaultCheckTolerances as tolerances } from "../../../core/bag/checkTolerances.ts";
import { compareClubs } from "../../../core/bag/compareClubs.ts";
import { someClub } from "../buildSheet/someParts.ts";

const gamer = someClub({});

describe("compareClubs (tolerances: common practice, no source)", () => {
  it("finds a club the same as itself", () => {
    expect(compareClubs(gamer, gamer, tolerances)).toMatchObject({ overall: "same", differing: [], unknown: [] });
  });

  it("gives each difference as twin less gamer, and turns its sign when they change places", () => {
    const twin = someClub({ squaredLoftDeg: 9.6, totalMassG: 320 });
    const delta = (from: typeof gamer, to: typeof gamer) => compareClubs(from, to, tolerances).rows.map((row) => row.delta);
    expect(delta(twin, gamer)).toEqual(delta(gamer, twin).map((value) => 0 - value));
    const loft = compareClubs(gamer, twin, tolerances).rows.find(({ quantity }) => quantity === "squaredLoftDeg");
    expect([loft?.verdict, loft?.delta]).toEqual(["off", expect.closeTo(0.4, 9)]);
  });

  it("is off when a part differs, however near the readings", () => {
    expect(compareClubs(gamer, someClub({ shaftModel: "Curlew 70 S" }), tolerances)).toMatchObject({ overall: "off", differing: ["shaftModel"] });
  });

  it("names what only one of them has on record, and measures nothing from it", () => {
    const comparison = compareClubs(gamer, someClub({ swingWeightPoints: null, rib: null }), tolerances);
    expect(comparison.unknown).toEqual(["swingWeightPoints", "rib"]);
    expect(comparison.rows.some(({ quantity }) => quantity === "swingWeightPoints")).toBe(false);
  });
});
