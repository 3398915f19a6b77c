import { describe, expect, it } from "vitest";
import { type CheckedQuantity, checkedQuantities, defaultCheckTolerances as tolerances } from "../../../core/bag/checkTolerances.ts";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { type FinalCheckQuestion, finalCheck } from "../../../core/buildSheet/finalCheck.ts";
import { planClub } from "../../../core/buildSheet/planClub.ts";
import type { ClubName, OrderKind } from "../../../core/kinds.ts";
import { defaultSelectionTolerances } from "../../../core/selection/selectionTolerances.ts";
import published from "../../../fixtures/published/finalChecks.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";
import { someParts, someTarget } from "./someParts.ts";

const target = someTarget({ squaredLoftDeg: 9.25, soledFaceDeg: 0.5, swingWeightPoints: 3 });
const asked = (given: Partial<FinalCheckQuestion>): FinalCheckQuestion => ({
  kind: "build",
  target,
  planned: {},
  listed: [],
  measured: {},
  looks: { wanted: {}, seen: {} },
  tolerances,
  ...given,
});
const check = (measured: FinalCheckQuestion["measured"], given: Partial<FinalCheckQuestion> = {}) => finalCheck(asked({ measured, ...given }));
const right = { squaredLoftDeg: 9.25, soledFaceDeg: 0.5, swingWeightPoints: 3, lengthMm: 1143 };
const emptyTarget = (club: string) => someTarget({ club: club as ClubName, lengthMm: null });

describe(byTable(finalCheck, "finalChecks", published), () => {
  const sizes = { gripAt2InMm: 23.5, gripAt6InMm: 22.1 };
  const readings: Readonly<Record<CheckedQuantity, number>> = {
    ...{ squaredLoftDeg: 9, soledFaceDeg: 0, seatedLieDeg: 60, bounceDeg: 8, lengthMm: 1000, swingWeightPoints: 2 },
    ...{ totalMassG: 400, headMassG: 250, wraps: 1, ...sizes },
  };

  it.each(published.rows)("$kind of a $club must be measured in $must", ({ kind, club, must }) => {
    const question = asked({ kind: kind as OrderKind, target: emptyTarget(club), planned: sizes, listed: ["totalMassG"] });
    expect(finalCheck(question)).toMatchObject({ unmeasured: must, overall: must.length === 0 ? "same" : "unmeasured" });
    const measured = Object.fromEntries(must.map((quantity) => [quantity, readings[quantity as CheckedQuantity]]));
    expect(finalCheck({ ...question, measured })).toMatchObject({ unmeasured: [], overall: "same" });
  });
});

describe("finalCheck", () => {
  it.each([
    ["squaredLoftDeg", 9.35, "same", false],
    ["squaredLoftDeg", 9.5, "close", false],
    ["squaredLoftDeg", 9.0, "close", false],
    ["squaredLoftDeg", 9.6, "off", false],
    ["squaredLoftDeg", 9.8, "off", true],
    ["soledFaceDeg", 1.0, "close", false],
    ["soledFaceDeg", 1.1, "off", false],
    ["swingWeightPoints", 3.5, "close", false],
    ["swingWeightPoints", 4.1, "off", true],
    ["lengthMm", 1143 + 25.4 / 16, "close", false],
    ["lengthMm", 1141, "off", false],
  ] as const)("reads %s %d as %s", (quantity, got, verdict, flagged) => {
    const row = check({ ...right, [quantity]: got }).rows.find((each) => each.quantity === quantity);
    expect([row?.verdict, row?.flagged]).toEqual([verdict, flagged]);
    expect(row?.delta).toBeCloseTo(got - (target[quantity] ?? Number.NaN), 9);
  });

  it("is as good as its worst row", () => {
    expect(check(right).overall).toBe("same");
    expect(check({ ...right, swingWeightPoints: 3.4 }).overall).toBe("close");
    expect(check({ ...right, swingWeightPoints: 3.4, squaredLoftDeg: 8 }).overall).toBe("off");
  });

  it("is not done before what must be measured is, and is off before that when something is", () => {
    expect(check({ squaredLoftDeg: 9.25 })).toMatchObject({ unmeasured: ["soledFaceDeg", "swingWeightPoints", "lengthMm"], overall: "unmeasured" });
    expect(check({}).overall).toBe("unmeasured");
    expect(check({ squaredLoftDeg: 8 }).overall).toBe("off");
  });

  it("takes a reading that nothing is held against as read, without a row", () => {
    const ground = check({ bounceDeg: 7.5, headMassG: 299 }, { kind: "grind", target: emptyTarget("lw") });
    expect(ground).toEqual({ rows: [], looks: [], unmeasured: [], overall: "same" });
    expect(check({ bounceDeg: 7.5 }, { kind: "grind", target: emptyTarget("lw") })).toMatchObject({ unmeasured: ["headMassG"] });
  });

  it("sizes a grip at each place only where a size is known", () => {
    const regripped = (planned: FinalCheckQuestion["planned"]) => check({}, { kind: "regrip", target: emptyTarget("7i"), planned }).unmeasured;
    expect(regripped({})).toEqual([]);
    expect(regripped({ gripAt2InMm: 23, gripAt6InMm: null })).toEqual(["gripAt2InMm"]);
    expect(regripped({ gripAt6InMm: 22 })).toEqual(["gripAt6InMm"]);
  });

  it.each([
    [23 + 0.005 * 25.4, "same"],
    [23 + 0.01 * 25.4, "close"],
    [23 + 0.011 * 25.4, "off"],
    [23 - 0.011 * 25.4, "off"],
  ])("reads a grip of 23 mm that measures %d as %s, a matter of feel", (got, verdict) => {
    const { rows } = check({ gripAt2InMm: got }, { kind: "regrip", planned: { gripAt2InMm: 23 } });
    expect(rows).toMatchObject([{ quantity: "gripAt2InMm", verdict, concerns: "feel", wantedFrom: "plan" }]);
  });

  it("leaves feel to the player and conformity to the lead, a club past 48 in too, but no putter", () => {
    const long = someTarget({ ...target, lengthMm: 1219 });
    const concerns = (measured: FinalCheckQuestion["measured"], of = long) =>
      Object.fromEntries(check(measured, { target: of }).rows.map((row) => [row.quantity, row.concerns]));
    expect(concerns({ ...right, lengthMm: 1219 })).toEqual({
      squaredLoftDeg: "conformity",
      soledFaceDeg: "conformity",
      swingWeightPoints: "feel",
      lengthMm: "feel",
    });
    expect(concerns({ lengthMm: 48 * 25.4 })).toEqual({ lengthMm: "feel" });
    expect(concerns({ lengthMm: 1220 })).toEqual({ lengthMm: "conformity" });
    expect(concerns({ lengthMm: 1220 }, { ...long, club: "putter" as ClubName })).toEqual({ lengthMm: "feel" });
  });

  it("holds what was not written against the plan", () => {
    const stampOnly = someTarget({ stampedLoftDeg: 9 });
    const planning = { target: stampOnly, kind: "build" as const, reference: null, parts: someParts({}) };
    const result = planClub({ ...planning, allowances: defaultAllowances, tolerances: defaultSelectionTolerances });
    const planned = result.kind === "planned" ? { ...result.plan.choice.attitude, ...result.plan.predicted } : {};
    const { rows } = check({ squaredLoftDeg: 10.5, lengthMm: 1143 }, { target: stampOnly, planned });
    expect(rows.map(({ quantity, verdict, wantedFrom }) => [quantity, verdict, wantedFrom])).toEqual([
      ["squaredLoftDeg", "off", "plan"],
      ["lengthMm", "same", "target"],
    ]);
  });

  it("lists the rows in one order, whatever came first", () => {
    const { rows } = check({ lengthMm: 1143, squaredLoftDeg: 9 });
    expect(rows.map(({ quantity }) => quantity)).toEqual(["squaredLoftDeg", "lengthMm"]);
    expect(checkedQuantities.slice(-2)).toEqual(["gripAt2InMm", "gripAt6InMm"]);
  });

  it("counts a look that was wanted and not seen as unmeasured, and another than wanted as off", () => {
    const regripped = (seen: FinalCheckQuestion["looks"]["seen"]) =>
      check({}, { kind: "regrip", looks: { wanted: { logo: "down", rib: "none" }, seen } });
    expect(regripped({})).toMatchObject({ looks: [], unmeasured: ["logo", "rib"], overall: "unmeasured" });
    expect(regripped({ logo: "down" })).toMatchObject({ unmeasured: ["rib"], overall: "unmeasured" });
    expect(regripped({ logo: "down", rib: "none" })).toMatchObject({ unmeasured: [], overall: "same" });
    const wrong = regripped({ logo: "up", rib: "none" });
    expect(wrong.overall).toBe("off");
    expect(wrong.looks).toEqual([
      { look: "logo", wanted: "down", seen: "up", verdict: "off", concerns: "feel" },
      { look: "rib", wanted: "none", seen: "none", verdict: "same", concerns: "feel" },
    ]);
  });

  it("leaves a sleeve at another mark to the lead, and reads words as a phone writes them", () => {
    const looked = (seen: string) => check(right, { looks: { wanted: { sleeve: "Strong 1" }, seen: { sleeve: seen, grip: "Gorse" } } });
    expect(looked("  strong  1 ").looks).toMatchObject([{ look: "sleeve", verdict: "same", concerns: "conformity" }]);
    expect(looked("strong 2")).toMatchObject({ looks: [{ verdict: "off", concerns: "conformity" }], overall: "off" });
  });

  it("refuses what is no number, no kind of work, no club and no look", () => {
    expect(() => check({ ...right, lengthMm: Number.NaN })).toThrow("question.measured.lengthMm");
    expect(() => check({}, { planned: { wraps: Number.POSITIVE_INFINITY } })).toThrow("question.planned.wraps");
    expect(() => check({}, { kind: "polish" as OrderKind })).toThrow('"field":"kind"');
    expect(() => check({}, { target: emptyTarget("chipper") })).toThrow('"field":"club"');
    expect(() => check({}, { looks: { wanted: { colour: "red" } as object, seen: {} } })).toThrow('"field":"look"');
    expect(() => check({}, { looks: { wanted: {}, seen: { colour: "red" } as object } })).toThrow('"field":"look"');
  });
});
