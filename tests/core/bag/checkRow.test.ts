import { describe, expect, it } from "vitest";
import { checkRow, worstVerdict } from "../../../core/bag/checkRow.ts";
import { type ComparedQuantity, comparedQuantities, defaultCheckTolerances as tolerances } from "../../../core/bag/checkTolerances.ts";
import { defaultGaugeErrors as errors } from "../../../core/bag/gaugeErrors.ts";
import published from "../../../fixtures/published/gaugeError.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

/** What a club usually reads: verdicts depend on the distance only. */
const usual: Readonly<Record<ComparedQuantity, number>> = {
  squaredLoftDeg: 30,
  soledFaceDeg: 0,
  seatedLieDeg: 60,
  bounceDeg: 10,
  lengthMm: 940,
  swingWeightPoints: 2,
  totalMassG: 420,
  headMassG: 260,
  wraps: 5,
  balancePointMm: 720,
  inertiaKgCm2: 2700,
  frequencyCpm: 300,
  gripAt2InMm: 23,
  gripAt6InMm: 21,
  offsetMm: 3,
};

const twoReadings = { readings: 2, errors } as const;

describe(byTable(checkRow, "gaugeError", published), () => {
  it.each(published.verdicts)("reads two lofts $apartDeg° apart as $verdict", ({ apartDeg, verdict }) => {
    expect(checkRow("squaredLoftDeg", 9, 9 + apartDeg, tolerances, twoReadings).verdict).toBe(verdict);
    expect(checkRow("squaredLoftDeg", 9, 9 - apartDeg, tolerances, twoReadings).verdict).toBe(verdict);
  });
});

describe(byLaw(checkRow, "the difference turns its sign when wanted and got change places, the verdict stays"), () => {
  it.each(comparedQuantities)("in %s", (quantity) => {
    const { tolerance } = tolerances[quantity];
    for (const apart of [0, tolerance * 0.4, tolerance, tolerance * 1.2 + 0.1, tolerance * 3 + 1]) {
      const [there, back] = [
        checkRow(quantity, usual[quantity], usual[quantity] + apart, tolerances),
        checkRow(quantity, usual[quantity] + apart, usual[quantity], tolerances),
      ];
      expect(there.delta).toBeCloseTo(apart, 12);
      expect(back.delta + there.delta).toBe(0);
      expect([back.verdict, back.flagged]).toEqual([there.verdict, there.flagged]);
    }
  });
});

describe("checkRow", () => {
  it.each([
    ["squaredLoftDeg", 0.125, "same", false],
    ["squaredLoftDeg", 0.126, "close", false],
    ["squaredLoftDeg", 0.25, "close", false],
    ["squaredLoftDeg", 0.251, "off", false],
    ["squaredLoftDeg", 0.5, "off", false],
    ["squaredLoftDeg", 0.501, "off", true],
    ["seatedLieDeg", 0.125, "same", false],
    ["seatedLieDeg", 0.251, "off", false],
    ["soledFaceDeg", 0.25, "same", false],
    ["soledFaceDeg", 0.51, "off", false],
    ["bounceDeg", 1, "close", false],
    ["lengthMm", 25.4 / 32, "same", false],
    ["lengthMm", 1.6, "off", false],
    ["swingWeightPoints", 0.3, "same", false],
    ["swingWeightPoints", 0.5, "close", false],
    ["swingWeightPoints", 1.01, "off", true],
    ["totalMassG", 0.2, "same", false],
    ["totalMassG", 2.1, "off", false],
    ["headMassG", 0.5, "close", false],
    ["wraps", 0, "same", false],
    ["wraps", 1, "off", false],
    ["balancePointMm", 1, "same", false],
    ["balancePointMm", 2.1, "off", false],
    ["inertiaKgCm2", 20, "close", false],
    ["frequencyCpm", 1, "same", false],
    ["frequencyCpm", 3.1, "off", true],
    ["gripAt2InMm", 0.254, "close", false],
    ["gripAt6InMm", 0.26, "off", false],
    ["offsetMm", 0.5, "close", false],
    ["bounceDeg", 0.5, "same", false],
    ["bounceDeg", 0.51, "close", false],
    ["headMassG", 0.2, "same", false],
    ["headMassG", 0.21, "close", false],
    ["inertiaKgCm2", 10, "same", false],
    ["inertiaKgCm2", 20.1, "off", false],
    ["gripAt2InMm", 0.127, "same", false],
    ["gripAt6InMm", 0.128, "close", false],
    ["offsetMm", 0.25, "same", false],
    ["offsetMm", 0.51, "off", false],
  ] as const)("reads a %s %d from what was wanted as %s", (quantity, apart, verdict, flagged) => {
    const wanted = usual[quantity];
    for (const got of [wanted + apart, wanted - apart]) {
      expect(checkRow(quantity, wanted, got, tolerances)).toMatchObject({ quantity, wanted, got, verdict, flagged });
    }
  });

  it("leaves more room for the gauge where two readings meet", () => {
    const apart = (readings: 1 | 2) => checkRow("swingWeightPoints", 3, 3.4, tolerances, { readings, errors });
    expect(apart(1)).toMatchObject({ verdict: "close", gaugeError: 0.3, tolerance: 0.5, concerns: "feel" });
    expect(apart(2)).toMatchObject({ verdict: "same", gaugeError: 0.3 * Math.SQRT2 });
  });

  it("is off past the tolerance even where the gauge is coarser", () => {
    const coarse = { ...errors, headMassG: { error: 3, source: "a kitchen scale" } };
    const row = (got: number) => checkRow("headMassG", 200, got, tolerances, { readings: 1, errors: coarse }).verdict;
    expect([row(200.5), row(200.6)]).toEqual(["same", "off"]);
  });

  it("refuses readings no club has, wanted or got", () => {
    expect(() => checkRow("lengthMm", 1143, -10_000, tolerances)).toThrow('"unit":"mm","min":200,"max":2000,"field":"lengthMm"');
    expect(() => checkRow("lengthMm", 2000.1, 1143, tolerances)).toThrow('"field":"wanted lengthMm"');
    expect(() => checkRow("lengthMm", 2000, 200, tolerances)).not.toThrow();
  });

  it("refuses readings that are no numbers and a quantity it does not know", () => {
    expect(() => checkRow("wraps", Number.NaN, 1, tolerances)).toThrow('"field":"wanted wraps"');
    expect(() => checkRow("wraps", 1, Number.POSITIVE_INFINITY, tolerances)).toThrow('"field":"wraps"');
    expect(() => checkRow("colour" as ComparedQuantity, 1, 1, tolerances)).toThrow("quantity-unreadable");
  });

  it.each(["tolerance", "flag"])("refuses a %s below 0 or no number, also of a quantity that is not asked", (field) => {
    const of = (value: number) => () => checkRow("wraps", 1, 1, { ...tolerances, offsetMm: { ...tolerances.offsetMm, [field]: value } });
    expect(of(0)).not.toThrow();
    expect(of(-0.001)).toThrow(`"field":"offsetMm ${field}"`);
    expect(of(Number.NaN)).toThrow(`"field":"offsetMm ${field}"`);
  });

  it("refuses a gauge error below 0 or no number, also of a quantity that is not asked", () => {
    const of = (error: number) => () =>
      checkRow("wraps", 1, 1, tolerances, { readings: 1, errors: { ...errors, offsetMm: { ...errors.offsetMm, error } } });
    expect(of(0)).not.toThrow();
    expect(of(-0.001)).toThrow('"field":"offsetMm gauge error"');
    expect(of(Number.NaN)).toThrow('"field":"offsetMm gauge error"');
  });
});

describe("worstVerdict", () => {
  it("is the worst there is, and null of nothing", () => {
    const of = (...verdicts: ("same" | "close" | "off")[]) => worstVerdict(verdicts.map((verdict) => ({ verdict })));
    expect([of(), of("same"), of("same", "close"), of("close", "off", "same")]).toEqual([null, "same", "close", "off"]);
  });
});
