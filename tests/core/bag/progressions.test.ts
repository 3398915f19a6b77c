import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultStep, progressions } from "../../../core/bag/progressions.ts";
import type { ClubName } from "../../../core/kinds.ts";
import { type Degrees, inchesFromMm, type Millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/setSteps.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

type Club = Parameters<typeof progressions>[0][number];
const club = (name: string, lengthMm: number | null, lieDeg: number | null): Club => ({
  club: name as ClubName,
  lengthMm: lengthMm as Millimetres | null,
  seatedLieDeg: lieDeg as Degrees | null,
});
const irons = published.clubs.map((each) => club(each.club, mmFromInches(each.lengthIn), each.lieDeg));
const step = (lengthStepMm: number, lieStepDeg: number) =>
  progressions([club("6i", 950, 61), club("7i", 950 - lengthStepMm, 61 + lieStepDeg)]).steps[0];

describe(byTable(progressions, "setSteps", published), () => {
  const { steps } = progressions(irons);

  it.each(published.steps as [string, string, number, string | null, number][])("from %s to %s is %d in (%s) and %d°", (...row) => {
    const [longer, shorter, lengthIn, lengthFlag, lieDeg] = row;
    const found = steps.find((each) => each.longer === longer);
    expect(Math.abs(inchesFromMm(found?.lengthStepMm ?? Number.NaN) - lengthIn)).toBeLessThan(published.tolerance);
    expect(Math.abs((found?.lieStepDeg ?? Number.NaN) - lieDeg)).toBeLessThan(published.tolerance);
    expect([found?.shorter, found?.lengthFlag, found?.lieFlag]).toEqual([shorter, lengthFlag, null]);
  });

  it("has no other step", () => {
    expect(steps).toHaveLength(published.steps.length);
  });
});

describe(byLaw(progressions, "the order of the clubs changes nothing, and the steps add up to the whole"), () => {
  it("sorts for itself, equal lengths too", () => {
    const clubs = [...irons, club("3h", irons[0]?.lengthMm ?? 0, 60), club("gw", null, 64), club("sw", null, 64), club("lw", 889, null)];
    fc.assert(
      fc.property(fc.shuffledSubarray(clubs, { minLength: clubs.length }), (shuffled) => {
        expect(progressions(shuffled)).toEqual(progressions(clubs));
      }),
    );
    const sum = progressions(irons).steps.reduce((total, { lengthStepMm }) => total + lengthStepMm, 0);
    expect(sum).toBeCloseTo((38.5 - 35.75) * 25.4, 9);
  });
});

describe("progressions", () => {
  it.each([
    [12.7, null],
    [12.7 - 25.4 / 16, null],
    [12.7 - 25.4 / 16 - 0.01, "small"],
    [12.7 + 25.4 / 16, null],
    [12.7 + 25.4 / 16 + 0.01, "large"],
    [0, "small"],
  ])("flags a length step of %d mm as %s", (lengthStepMm, flag) => {
    expect(step(lengthStepMm, 0.5)).toMatchObject({ lengthFlag: flag, lieFlag: null });
  });

  it.each([
    [0.5, null],
    [0.25, null],
    [0.24, "small"],
    [0.75, null],
    [0.76, "large"],
    [-0.5, "small"],
  ])("flags a lie step of %d° as %s", (lieStepDeg, flag) => {
    expect(step(12.7, lieStepDeg)).toMatchObject({ lieFlag: flag, lengthFlag: null });
  });

  it("names clubs not measured: no row without a length, no lie step without both lies", () => {
    const { steps, missingLength, missingLie } = progressions([
      club("8i", 927, 62.5),
      club("6i", 952.5, 61.5),
      club("7i", 940, null),
      club("5i", null, 61),
      club("4i", null, null),
    ]);
    expect(steps.map(({ longer, shorter, lieStepDeg, lieFlag }) => [longer, shorter, lieStepDeg, lieFlag])).toEqual([
      ["6i", "7i", null, null],
      ["7i", "8i", null, null],
    ]);
    expect([missingLength, missingLie]).toEqual([
      ["4i", "5i"],
      ["4i", "7i"],
    ]);
  });

  it("has no step between fewer than two clubs", () => {
    expect(progressions([]).steps).toEqual([]);
    expect(progressions(irons.slice(0, 1)).steps).toEqual([]);
  });

  it("takes another step than the default", () => {
    const wanted = { ...defaultStep, lengthMm: mmFromInches(0.25) };
    expect(progressions(irons, wanted).steps.map(({ lengthFlag }) => lengthFlag)).toEqual(["large", "large", "large", "large", "large", null]);
  });

  it.each([
    ["lengthMm", 200, 2000, (value: number) => progressions([club("7i", value, 62)])],
    ["seatedLieDeg", 40, 85, (value: number) => progressions([club("7i", 940, value)])],
    ["step lengthMm", 0, 200, (value: number) => progressions([], { ...defaultStep, lengthMm: value as Millimetres })],
    ["step lieDeg", -10, 10, (value: number) => progressions([], { ...defaultStep, lieDeg: value as Degrees })],
    ["lengthToleranceMm", 0, 200, (value: number) => progressions([], { ...defaultStep, lengthToleranceMm: value as Millimetres })],
    ["lieToleranceDeg", 0, 10, (value: number) => progressions([], { ...defaultStep, lieToleranceDeg: value as Degrees })],
  ] as const)("takes a %s from %d to %d and refuses what is past it", (field, min, max, of) => {
    expect(() => of(min)).not.toThrow();
    expect(() => of(max)).not.toThrow();
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN]) {
      expect(() => of(wrong)).toThrow(`"field":"${field}"`);
    }
  });

  it("refuses a club no one knows, and says which", () => {
    expect(() => progressions([club("7i", 940, 62), club("12i", null, null)])).toThrow('quantity-unreadable {"field":"club","written":"12i"');
  });

  it("takes a length or a lie that was left out as not measured", () => {
    const { lengthMm, seatedLieDeg } = club("7i", 940, 62) as Required<Club>;
    const of = (left: Partial<Club>) => progressions([club("6i", 952.7, 61.5), { club: "7i" as ClubName, ...left }, club("8i", 927.3, 62.5)]);
    expect(of({ seatedLieDeg })).toEqual(of({ lengthMm: null, seatedLieDeg }));
    expect(of({ lengthMm })).toEqual(of({ lengthMm, seatedLieDeg: null }));
    expect(of({ lengthMm }).steps.map(({ lieStepDeg }) => lieStepDeg)).toEqual([null, null]);
    expect(of({ seatedLieDeg }).missingLength).toEqual(["7i"]);
  });

  it("takes 40 clubs and refuses one more", () => {
    const many = (count: number) => Array.from({ length: count }, () => club("7i", 940, 62));
    expect(() => progressions(many(40))).not.toThrow();
    expect(() => progressions(many(41))).toThrow("list-of-wrong-size");
  });
});
