import { describe, expect, it } from "vitest";
import { defaultCheckTolerances as tolerances } from "../../../core/bag/checkTolerances.ts";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { finalCheck } from "../../../core/buildSheet/finalCheck.ts";
import { planClub } from "../../../core/buildSheet/planClub.ts";
import type { ClubName } from "../../../core/kinds.ts";
import { defaultSelectionTolerances } from "../../../core/selection/selectionTolerances.ts";
import { someParts, someTarget } from "./someParts.ts";

const target = someTarget({ squaredLoftDeg: 9.25, soledFaceDeg: 0.5, swingWeightPoints: 3 });
const check = (measured: Parameters<typeof finalCheck>[0]["measured"], of = target) =>
  finalCheck({ target: of, plan: null, kind: "build", measured, tolerances });
const right = { squaredLoftDeg: 9.25, soledFaceDeg: 0.5, swingWeightPoints: 3, lengthMm: 1143 };

describe("finalCheck (tolerances: common practice, no source)", () => {
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

  it("is not done before what must be measured is", () => {
    expect(check({ squaredLoftDeg: 9.25 })).toMatchObject({ unmeasured: ["soledFaceDeg", "swingWeightPoints", "lengthMm"], overall: "unmeasured" });
    expect(check({}).overall).toBe("unmeasured");
    expect(() => check({ ...right, lengthMm: Number.NaN })).toThrow("question.measured.lengthMm");
  });

  it("asks a swap for no length, and an iron for its lie in place of its face", () => {
    const iron = someTarget({ club: "7i" as ClubName, squaredLoftDeg: 34, soledFaceDeg: 0, seatedLieDeg: 62 });
    expect(finalCheck({ target: iron, plan: null, kind: "swap", measured: {}, tolerances }).unmeasured).toEqual(["squaredLoftDeg", "seatedLieDeg"]);
  });

  it("leaves feel to the player and conformity to the lead, a driver past 48 in too", () => {
    const long = someTarget({ ...target, lengthMm: 1219 });
    const concerns = (measured: Parameters<typeof finalCheck>[0]["measured"]) =>
      Object.fromEntries(check(measured, long).rows.map((row) => [row.quantity, row.concerns]));
    expect(concerns({ ...right, lengthMm: 1219 })).toEqual({
      squaredLoftDeg: "conformity",
      soledFaceDeg: "conformity",
      swingWeightPoints: "feel",
      lengthMm: "feel",
    });
    expect(concerns({ ...right, lengthMm: 1220 })).toMatchObject({ lengthMm: "conformity" });
  });

  it("holds what was not written against the plan", () => {
    const stampOnly = someTarget({ stampedLoftDeg: 9 });
    const planning = { target: stampOnly, kind: "build" as const, reference: null, parts: someParts({}) };
    const result = planClub({ ...planning, allowances: defaultAllowances, tolerances: defaultSelectionTolerances });
    const plan = result.kind === "planned" ? result.plan : null;
    const { rows } = finalCheck({ target: stampOnly, plan, kind: "build", measured: { squaredLoftDeg: 10.5, lengthMm: 1143 }, tolerances });
    expect(rows.map(({ quantity, verdict, wantedFrom }) => [quantity, verdict, wantedFrom])).toEqual([
      ["squaredLoftDeg", "off", "plan"],
      ["lengthMm", "same", "target"],
    ]);
  });
});
