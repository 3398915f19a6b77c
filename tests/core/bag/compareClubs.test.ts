import { describe, expect, it } from "vitest";
import { defaultCheckTolerances as tolerances } from "../../../core/bag/checkTolerances.ts";
import { compareClubs } from "../../../core/bag/compareClubs.ts";
import { defaultGaugeErrors } from "../../../core/bag/gaugeErrors.ts";
import published from "../../../fixtures/published/gaugeError.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { someClub } from "../buildSheet/someParts.ts";

const gamer = someClub({});
/** Measured as a backup is. */
const measured = {
  balancePointMm: 846,
  inertiaKgCm2: 2890,
  frequencyCpm: 258,
  frequencySetUp: "5 in clamp, grip on, 200 g",
  gripAt2InMm: 22.9,
  gripAt6InMm: 20.3,
  offsetMm: 0,
};

describe(byTable(compareClubs, "gaugeError", published), () => {
  it.each(published.verdicts)("finds two lofts $apartDeg° apart $verdict", ({ apartDeg, verdict }) => {
    const { rows } = compareClubs(gamer, someClub({ squaredLoftDeg: 9.2 + apartDeg }), tolerances);
    expect(rows.find(({ quantity }) => quantity === "squaredLoftDeg")?.verdict).toBe(verdict);
  });
});

describe(byLaw(compareClubs, "a club is the same as itself, and differences turn their sign when two change places"), () => {
  it("finds a club the same as itself", () => {
    const full = someClub(measured);
    const comparison = compareClubs(full, full, tolerances);
    expect(comparison).toMatchObject({ overall: "same", differing: [], unknown: [], incomparable: [] });
    expect(comparison.rows.map(({ quantity }) => quantity)).toEqual([
      "squaredLoftDeg",
      "soledFaceDeg",
      "seatedLieDeg",
      "lengthMm",
      "swingWeightPoints",
      "totalMassG",
      "headMassG",
      "wraps",
      "gripAt2InMm",
      "gripAt6InMm",
      "balancePointMm",
      "inertiaKgCm2",
      "frequencyCpm",
      "offsetMm",
    ]);
  });

  it("gives each difference as twin less gamer", () => {
    const twin = someClub({ squaredLoftDeg: 9.6, totalMassG: 320 });
    const delta = (from: typeof gamer, to: typeof gamer) => compareClubs(from, to, tolerances).rows.map((row) => row.delta);
    expect(delta(twin, gamer)).toEqual(delta(gamer, twin).map((value) => 0 - value));
    const loft = compareClubs(gamer, twin, tolerances).rows.find(({ quantity }) => quantity === "squaredLoftDeg");
    expect([loft?.verdict, loft?.delta]).toEqual(["off", expect.closeTo(0.4, 9)]);
  });
});

describe("compareClubs", () => {
  it("is as good as its worst row", () => {
    expect(compareClubs(gamer, someClub({ totalMassG: 322 }), tolerances).overall).toBe("close");
    expect(compareClubs(gamer, someClub({ totalMassG: 322, swingWeightPoints: 4 }), tolerances).overall).toBe("off");
  });

  it("is off when a part differs, however near the readings", () => {
    expect(compareClubs(gamer, someClub({ shaftModel: "Curlew 70 S" }), tolerances)).toMatchObject({ overall: "off", differing: ["shaftModel"] });
  });

  it("is unmeasured where nothing is known on both sides", () => {
    const bare = someClub({
      squaredLoftDeg: null,
      soledFaceDeg: null,
      seatedLieDeg: null,
      lengthMm: null,
      swingWeightPoints: null,
      totalMassG: null,
      headMassG: null,
      wraps: null,
    });
    expect(compareClubs(bare, gamer, tolerances)).toMatchObject({ overall: "unmeasured", rows: [], differing: [] });
  });

  it("names what only one of them has on record, and measures nothing from it", () => {
    const comparison = compareClubs(gamer, someClub({ swingWeightPoints: null, rib: null, offsetMm: 1 }), tolerances);
    expect(comparison.unknown).toEqual(["swingWeightPoints", "offsetMm", "rib"]);
    expect(comparison.rows.some(({ quantity }) => quantity === "swingWeightPoints" || quantity === "offsetMm")).toBe(false);
    expect(comparison.differing).toEqual([]);
  });

  it.each([
    ["another set-up", "2.5 in clamp", "5 in clamp"],
    ["a set-up only one of them has on record", "5 in clamp", null],
    ["a set-up neither has on record", null, null],
    ["a set-up that was left out", undefined, undefined],
  ])("compares no frequency of %s", (_, one, other) => {
    const of = (setUp: string | null | undefined) => someClub({ frequencyCpm: 258, ...(setUp === undefined ? {} : { frequencySetUp: setUp }) });
    const comparison = compareClubs(of(one), of(other), tolerances);
    expect(comparison.incomparable).toEqual(["frequencyCpm"]);
    expect(comparison.rows.some(({ quantity }) => quantity === "frequencyCpm")).toBe(false);
    expect(comparison.overall).toBe("same");
  });

  it("calls nothing incomparable that only one of them has on record", () => {
    expect(compareClubs(gamer, someClub({ frequencyCpm: 258 }), tolerances)).toMatchObject({ incomparable: [], unknown: ["frequencyCpm"] });
  });

  it("takes a finer gauge at its word", () => {
    const twin = someClub({ squaredLoftDeg: 9.3 });
    const finer = { ...defaultGaugeErrors, squaredLoftDeg: { error: 0.05, source: "a better gauge" } };
    expect([compareClubs(gamer, twin, tolerances).overall, compareClubs(gamer, twin, tolerances, finer).overall]).toEqual(["same", "close"]);
  });

  it.each([
    ["stampedLoftDeg", -15, 75],
    ["squaredLoftDeg", -15, 75],
    ["soledFaceDeg", -20, 20],
    ["seatedLieDeg", 40, 85],
    ["bounceDeg", -10, 30],
    ["lengthMm", 200, 2000],
    ["tipTrimMm", 0, 500],
    ["swingWeightPoints", -100, 100],
    ["totalMassG", 50, 2000],
    ["headMassG", 20, 1000],
    ["wraps", 0, 50],
    ["balancePointMm", 0, 2000],
    ["inertiaKgCm2", 100, 20_000],
    ["frequencyCpm", 50, 1000],
    ["gripAt2InMm", 5, 60],
    ["gripAt6InMm", 5, 60],
    ["offsetMm", -50, 50],
    ["measuredAt", 0, 8.64e15],
  ])("takes a %s from %d to %d and refuses what is past it, in either club", (field, min, max) => {
    const of = (value: number) => someClub({ [field]: value });
    expect(() => compareClubs(of(min), of(max), tolerances)).not.toThrow();
    for (const wrong of [min - 1, max + 1, Number.NaN]) {
      expect(() => compareClubs(of(wrong), gamer, tolerances)).toThrow(`"field":"${field}"`);
      expect(() => compareClubs(gamer, of(wrong), tolerances)).toThrow(`"field":"${field}"`);
    }
  });
});
