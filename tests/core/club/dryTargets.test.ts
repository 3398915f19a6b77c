import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { clubComponents } from "../../../core/club/clubComponents.ts";
import { dryTargets } from "../../../core/club/dryTargets.ts";
import { pointsOfMass } from "../../../core/club/massAtPosition.ts";
import { grams, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/dryReadings.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "./refusals.ts";
import { workedClub } from "./someParts.ts";

const iron = clubComponents(workedClub("7i"));
const driver = clubComponents(workedClub("driver"));
const NO_CAP = millimetres(0);

describe(byTable(dryTargets, "dryReadings", published), () => {
  const dry = dryTargets(iron, NO_CAP);
  const grip = iron.filter(({ name }) => name === "grip");
  const worth: Record<string, number> = {
    "ferrule and glue": dry.dryTargetPoints - dry.beforeGluePoints,
    tape: assembledClub(iron).swingWeightPoints - grip.reduce((sum, part) => sum + pointsOfMass(part.massG, part.fromCapMm), 0) - dry.dryTargetPoints,
  };
  it.each(published.rows)("counts $points points for $part", ({ part, points }) => {
    expect(Math.abs((worth[part] ?? Number.NaN) - points)).toBeLessThan(published.tolerance);
  });
});

describe(byLaw(dryTargets, "grip and tape put back give the whole club; a cap of t takes M·t off the moment"), () => {
  it("is the club less what comes on at gripping, each at its place", () => {
    const onAtGripping = driver.filter(({ stage }) => stage === "grip").reduce((sum, part) => sum + pointsOfMass(part.massG, part.fromCapMm), 0);
    expect(dryTargets(driver, NO_CAP).dryTargetPoints + onAtGripping).toBeCloseTo(assembledClub(driver).swingWeightPoints, 9);
  });

  it.each([1, 3.175, 8])("reads lower by the dry mass times the cap of %d mm", (capMm) => {
    const [bare, capped] = [dryTargets(driver, NO_CAP), dryTargets(driver, millimetres(capMm))];
    const massG = (stages: readonly string[]) => driver.filter(({ stage }) => stages.includes(stage)).reduce((sum, part) => sum + part.massG, 0);
    const pointsOf = (g: number) => (g * capMm) / (49.61166546875 * 25.4);
    expect(bare.dryTargetPoints - capped.dryTargetPoints).toBeCloseTo(pointsOf(massG(["ready", "bond"])), 9);
    expect(bare.beforeGluePoints - capped.beforeGluePoints).toBeCloseTo(pointsOf(massG(["ready"])), 9);
  });
});

describe("dryTargets", () => {
  it("refuses caps and masses that cannot be", () => {
    refusedOutside((mm) => dryTargets(iron, millimetres(mm)), 0, 50);
    for (const name of ["head", "tape"]) {
      const parts = iron.map((part) => (part.name === name ? { ...part, massG: grams(Number.NaN) } : part));
      expect(() => dryTargets(parts, NO_CAP)).toThrow(`"field":"${name} massG"`);
    }
  });

  it("refuses a part that would stand above the stop of the scale", () => {
    const lead = { name: "lead", stage: "ready", massG: grams(2), fromCapMm: millimetres(3) } as const;
    expect(() => dryTargets([...iron, lead], millimetres(3))).not.toThrow();
    expect(() => dryTargets([...iron, lead], millimetres(3.1))).toThrow('"field":"lead fromCapMm"');
  });
});
