import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StepKind } from "../../../core/bench/benchTypes.ts";
import { cautions, cautionsOfStep } from "../../../core/rules/cautions.ts";
import { cautionsFor } from "../../../core/rules/cautionsFor.ts";
import { type WorkMaterial, workMaterials } from "../../../core/rules/cautionTypes.ts";
import published from "../../../fixtures/published/cautions.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const bounds: Readonly<Record<string, string>> = {
  respirableDust: "atMost",
  workRestGap: "atMost",
  tongueGuardGap: "atMost",
  airChanges: "atLeast",
  inletSpeed: "atLeast",
};

describe(byTable(cautionsFor, "cautions", published), () => {
  it.each(published.rows)("says $value $unit for $code at $step ($source)", ({ step, atHand, code, quantity, value, unit, opened }) => {
    const caution = cautionsFor(step as StepKind, atHand as readonly WorkMaterial[]).find((one) => one.code === code);
    const number = caution?.numbers.find((one) => one.quantity === quantity);
    const allowed = unit === "°C" ? published.tolerance : 1e-9;
    expect(Math.abs((number?.value ?? Number.NaN) - value)).toBeLessThan(allowed);
    expect(number?.unit).toBe(unit);
    expect(number?.bound).toBe(bounds[quantity] ?? "near");
    expect(caution?.source?.opened).toBe(opened);
  });
});

describe(byLaw(cautionsFor, "more at hand is never fewer cautions"), () => {
  it("holds at every step", () => {
    const some = fc.subarray([...workMaterials]);
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(cautionsOfStep) as StepKind[])),
        some,
        fc.constantFrom(...workMaterials),
        (step, atHand, another) => {
          const codes = (materials: readonly WorkMaterial[]) => cautionsFor(step, materials).map(({ code }) => code);
          expect(codes([...new Set([...atHand, another])])).toEqual(expect.arrayContaining(codes(atHand)));
        },
      ),
    );
  });
});

describe("cautionsFor", () => {
  const codes = (step: StepKind, ...atHand: readonly WorkMaterial[]) => cautionsFor(step, atHand).map(({ code }) => code);

  it.each([
    ["tipPrepare", ["graphite"], ["graphiteDust", "graphiteConducts", "eyeProtection"]],
    ["tipPrepare", ["steel"], ["eyeProtection"]],
    ["cut", ["steel"], ["wheelDust", "steelSparks", "eyeProtection"]],
    ["cut", ["graphite", "epoxy"], ["graphiteDust", "graphiteConducts", "wheelDust", "greenBond", "eyeProtection"]],
    ["bond", ["epoxy"], ["epoxySensitises", "noSolventOnSkin"]],
    ["grip", ["gripSolvent"], ["solventFlammable"]],
    ["grip", [], []],
    ["gripSet", ["gripSolvent"], ["solventFlammable"]],
    ["removeOld", ["epoxy", "graphite"], ["hotHosel", "shaftResinSoftens", "pressPinches", "eyeProtection"]],
    ["removeOld", ["epoxy", "steel"], ["hotHosel", "pressPinches", "eyeProtection"]],
    ["removeOld", ["graphite"], ["eyeProtection"]],
    ["coolDown", ["epoxy"], ["hotHosel"]],
    ["turnFerrule", ["epoxy"], ["greenBond", "eyeProtection"]],
    ["bend", ["epoxy"], ["greenBond", "hoselCracks"]],
    ["bend", [], ["hoselCracks"]],
    ["stampText", [], ["eyeProtection"]],
    ["soleWork", [], ["workRest", "tongueGuard", "wheelDust", "eyeProtection", "qualifiedGrinder"]],
    ["soleWork", ["titanium"], ["titaniumBurns", "workRest", "tongueGuard", "wheelDust", "eyeProtection", "qualifiedGrinder"]],
    [
      "soleWork",
      ["magnesium", "steel"],
      ["magnesiumBurns", "steelSparks", "workRest", "tongueGuard", "wheelDust", "eyeProtection", "qualifiedGrinder"],
    ],
    ["dryWeigh", ["lead"], ["leadOnHands"]],
    ["measure", ["lead"], ["leadOnHands"]],
    ["measure", [], []],
  ] as const)("at %s with %j at hand", (step, atHand, wanted) => {
    expect(codes(step, ...atHand)).toEqual(wanted);
  });

  it.each([
    "pullParts",
    "dryFit",
    "bondSet",
    "gaugeHead",
    "pullHead",
    "layOutGrip",
    "headOn",
    "sign",
    "walk",
    "turnSleeve",
    "paintDry",
    "inspect",
  ] as const)("has nothing to say at %s", (step) => {
    expect(codes(step, ...workMaterials)).toEqual([]);
  });

  it("uses every caution at some step", () => {
    expect(new Set(Object.values(cautionsOfStep).flat())).toEqual(new Set(Object.keys(cautions)));
  });

  it("says of common practice that it has no source", () => {
    expect(cautionsFor("bend", []).map(({ source }) => source)).toEqual([null]);
  });

  it("refuses an unknown step, an unknown material and more materials than there are", () => {
    expect(() => cautionsFor("polish" as StepKind, [])).toThrow('quantity-unreadable {"field":"step"');
    expect(() => cautionsFor("cut", ["glass" as WorkMaterial])).toThrow('quantity-unreadable {"field":"atHand"');
    expect(() => cautionsFor("cut", [...workMaterials, "lead"])).toThrow('list-of-wrong-size {"field":"atHand"');
    expect(codes("cut", ...workMaterials)).toContain("graphiteDust");
  });
});
