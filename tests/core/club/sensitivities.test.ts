import { describe, expect, it } from "vitest";
import { sensitivities } from "../../../core/club/sensitivities.ts";
import { grams, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/swingWeightSensitivity.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { clubWithOwnInertia, driver, iron, pointClub, rowOf } from "./checkClubs.ts";
import { refusedOutside } from "./refusals.ts";

const { tolerance } = published;
const places = { tipWeightFromCapMm: mmFromInches(published.places.tipWeightIn), buttWeightFromCapMm: mmFromInches(published.places.buttWeightIn) };

describe(byTable(sensitivities, "swingWeightSensitivity", published), () => {
  it.each(published.clubs)("comes to the points of the $club", (row) => {
    const found = sensitivities(pointClub(rowOf(row.club)), places);
    const off = [
      2 * found.headOneGram.swingWeightPoints - row.headPointsOfTwoGrams,
      found.headGramsPerPointG - row.headGramsPerPointG,
      found.gripFiveGrams.swingWeightPoints - row.gripFiveGrams,
      found.shaftNineGrams.swingWeightPoints - row.shaftNineGrams,
      found.halfInchLonger.swingWeightPoints - row.halfInchLonger,
      found.buttTenGrams.swingWeightPoints - row.buttTenGrams,
      row.tipPointsOfFourGrams === undefined ? 0 : 4 * found.tipOneGram.swingWeightPoints - row.tipPointsOfFourGrams,
    ];
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(tolerance.points);
  });

  it.each(published.clubs)("comes to the inertia of the $club as points", (row) => {
    const found = sensitivities(pointClub(rowOf(row.club)), places);
    expect(Math.abs(found.headOneGram.inertiaKgCm2 - row.headOneGramKgCm2)).toBeLessThan(tolerance.inertiaKgCm2);
    expect(Math.abs(found.gripFiveGrams.inertiaKgCm2 - published.places.gripFiveGramsKgCm2)).toBeLessThan(tolerance.inertiaKgCm2);
    expect(Math.abs(found.buttTenGrams.inertiaKgCm2 - published.places.buttTenGramsKgCm2)).toBeLessThan(tolerance.smallInertiaKgCm2);
    const halfInch = row.halfInchKgCm2 === undefined ? 0 : found.halfInchLonger.pointInertiaKgCm2 - row.halfInchKgCm2;
    expect(Math.abs(halfInch)).toBeLessThan(tolerance.halfInchInertiaKgCm2);
  });
});

describe(byLaw(sensitivities, "own inertia grows with the mass of shaft and grip, not with a gram at the head's centre"), () => {
  it.each([driver, iron])("beside the points of the $club", (row) => {
    const [points, bodies] = [sensitivities(pointClub(row), places), sensitivities(clubWithOwnInertia(row), places)];
    const own = (name: "headOneGram" | "shaftNineGrams" | "gripFiveGrams") => bodies[name].inertiaKgCm2 - points[name].inertiaKgCm2;
    expect(own("headOneGram")).toBeCloseTo(row.headFromAxisCm ** 2 / 1000, 8);
    expect(own("shaftNineGrams")).toBeCloseTo((9 * (row.shaftLengthIn * 2.54) ** 2) / 12_000, 8);
    expect(own("gripFiveGrams")).toBeCloseTo((5 * 7.62 ** 2) / 1000, 8);
    for (const name of ["headOneGram", "gripFiveGrams", "shaftNineGrams", "buttTenGrams", "tipOneGram", "halfInchLonger"] as const) {
      expect(bodies[name].pointInertiaKgCm2).toBeCloseTo(points[name].pointInertiaKgCm2, 8);
      expect(bodies[name].swingWeightPoints).toBeCloseTo(points[name].swingWeightPoints, 8);
    }
  });
});

describe("sensitivities", () => {
  const club = clubWithOwnInertia(iron);

  it("takes a grip without mass", () => {
    const bare = { ...club, grip: { ...club.grip, massG: grams(0) } };
    expect(sensitivities(bare, places).gripFiveGrams.inertiaKgCm2).toBeCloseTo((5 * (4.25 * 2.54) ** 2) / 1000, 8);
  });

  it("refuses clubs and places that cannot be", () => {
    refusedOutside((mm) => sensitivities({ ...club, capMm: millimetres(mm) }, places), 0, 50);
    refusedOutside((mm) => sensitivities(club, { ...places, tipWeightFromCapMm: millimetres(mm) }), 0, 2000);
    refusedOutside((mm) => sensitivities(club, { ...places, buttWeightFromCapMm: millimetres(mm) }), 0, 2000);
    expect(() => sensitivities(club, { ...places, tipWeightFromCapMm: millimetres(-1) })).toThrow('"field":"tip weight fromCapMm"');
    expect(() => sensitivities(club, { ...places, buttWeightFromCapMm: millimetres(-1) })).toThrow('"field":"butt weight fromCapMm"');
  });
});
