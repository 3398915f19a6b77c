import { describe, expect, it } from "vitest";
import * as core from "../../core/index.ts";
import { numbersIn, withNumberAt } from "./numbersIn.ts";
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
});
