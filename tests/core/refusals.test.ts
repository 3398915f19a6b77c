import { describe, expect, it } from "vitest";
import * as core from "../../core/index.ts";
import { numbersIn, type Place, withNumberAt } from "./numbersIn.ts";
import { examples } from "./publicExamples.ts";

/** These name the unit of a number and look at nothing. */
const unitNames = new Set(
  "grams millimetres degrees swingWeightPoints kilogramSquareCentimetres inchOunces cyclesPerMinute newtonSquareMetres seconds cubicCentimetres squareMillimetres microseconds shoreA shoreD instant id".split(
    " ",
  ),
);
const publicFunctions = Object.entries(core).filter(
  ([name, value]) => typeof value === "function" && value !== (core.DomainError as unknown) && !unitNames.has(name),
);
const call = (name: string, args: readonly unknown[]): unknown => {
  const answer = (core as unknown as Record<string, (...given: readonly unknown[]) => unknown>)[name]?.(...args);
  return typeof answer === "object" && answer !== null && "next" in answer ? (answer as Iterator<unknown>).next() : answer;
};
const thrownBy = (work: () => unknown): unknown => {
  try {
    work();
    return null;
  } catch (error) {
    return error;
  }
};

/** The unit that the end of a quantity's name stands for. */
const unitsByEnding: readonly (readonly [RegExp, string])[] = [
  [/Deg$/, "deg"],
  [/Mm$/, "mm"],
  [/[mM]assG$|^g$/, "g"],
  [/KgCm2$/, "kg·cm²"],
  [/[pP]oints$/, "points"],
  [/Nm2$/, "N·m²"],
  [/[cC]pm$/, "cpm"],
  [/Min$/, "min"],
  [/InOz$|inchOunces$/, "in-oz"],
];

/** What a refusal says of its quantity, and the unit its name would want; null where the name tells none. */
function unitSaid(error: unknown): { readonly field: string; readonly said: string; readonly wanted: string } | null {
  const facts =
    error instanceof core.DomainError && error.code === "quantity-out-of-range" ? (error.facts as core.Facts["quantity-out-of-range"]) : null;
  const wanted = facts === null || facts.field.includes(".") ? undefined : unitsByEnding.find(([ending]) => ending.test(facts.field))?.[1];
  return facts === null || wanted === undefined ? null : { field: facts.field, said: facts.unit, wanted };
}

describe("every public function of core", () => {
  it("has an example call here, and no example is of something else", () => {
    expect(Object.keys(examples).sort()).toEqual(publicFunctions.map(([name]) => name).sort());
  });

  it.each(Object.entries(examples))("%s answers its example and refuses each of its numbers as NaN or infinite", (name, args: readonly unknown[]) => {
    expect(thrownBy(() => call(name, args))).toBeNull();
    const accepted = numbersIn(args).flatMap((place) =>
      [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
        .filter((number) => !(thrownBy(() => call(name, withNumberAt(args, place, number) as readonly unknown[])) instanceof core.DomainError))
        .map((number) => `${place.join(".")} = ${number}`),
    );
    expect(accepted).toEqual([]);
  });

  it.each(Object.entries(examples))("%s names the unit of every number it refuses", (name, args: readonly unknown[]) => {
    const said = numbersIn(args).flatMap(
      (place) => unitSaid(thrownBy(() => call(name, withNumberAt(args, place, Number.NaN) as readonly unknown[]))) ?? [],
    );
    expect(said.filter((one) => one.said !== one.wanted)).toEqual([]);
  });

  it.each<[string, Place, number]>([
    ["planClub", [0, "target", "seatedLieDeg"], 200],
    ["planClub", [0, "target", "lengthMm"], 0],
    ["planClub", [0, "allowances", "tapeG"], -1],
    ["planClub", [0, "allowances", "weightPorts", "driver"], 1.5],
    ["planClub", [0, "allowances", "headOwnInertiaKgCm2", "iron"], -1],
    ["planClub", [0, "tolerances", "scoreBand"], 0],
    ["chooseHeads", [0, "tolerances", "squaredLoftDeg"], 0],
    ["chooseHeads", [0, "tolerances", "soledFaceDeg"], -1],
    ["chooseHeads", [0, "heads", 0, "massG"], -10_000],
    ["chooseHeads", [0, "heads", 0, "bounceDeg"], 1e6],
    ["resolveTarget", [0, "request", "clauses", "stampedLoftDeg", "value"], -900],
    ["simulateOnce", [0, "snapshot", "stations", "bench"], -1],
    ["simulateOnce", [0, "snapshot", "jobs", 0, "steps", 0, "route", "medianMin"], -5],
    ["simulateOnce", [0, "snapshot", "jobs", 0, "steps", 0, "workedMs"], -1],
    ["simulateOnce", [0, "snapshot", "jobs", 0, "weight"], -1],
    ["simulateOnce", [0, "pace", "spreads", "step"], -1],
    ["simulateOnce", [0, "pace", "spreads", "job"], 1e6],
    ["simulateOnce", [0, "pace", "learned", 0, "alpha"], 0],
    ["simulateOnce", [0, "pace", "learned", 0, "kappa"], -1],
    ["simulateOnce", [0, "pace", "learned", 0, "beta"], -1],
    ["simulateOnce", [0, "pace", "learned", 0, "mean"], 60],
    ["simulateOnce", [0, "seed"], 0.5],
    ["simulateOnce", [0, "sample"], -1],
    ["estimateInSlices", [1], -2],
    ["readyTimes", [0, "samples"], 0],
    ["inSeries", [0, "steps", 0, "floorMin"], -1],
    ["routeFor", [1, "adhesiveHandleMin"], -5],
  ])("%s refuses, at %j, %d", (name, place, value) => {
    expect(thrownBy(() => call(name, withNumberAt(examples[name], place, value) as readonly unknown[]))).toMatchObject({
      code: "quantity-out-of-range",
    });
  });

  it("refuses a kind of work and a family it does not know", () => {
    const [question, floors] = examples.routeFor ?? [];
    expect(() => call("routeFor", [{ ...(question as object), kind: "polish" }, floors])).toThrow("quantity-unreadable");
    expect(() => call("routeFor", [{ ...(question as object), family: "chipper" }, floors])).toThrow("quantity-unreadable");
  });
});
