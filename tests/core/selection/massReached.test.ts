import { describe, expect, it } from "vitest";
import { type AddableMass, addableMasses, massReached } from "../../../core/selection/massReached.ts";

const sums = (...of: readonly (readonly [massG: number, count: number])[]): readonly AddableMass[] => of.map(([massG, count]) => ({ massG, count }));

describe("massReached (by hand)", () => {
  it.each<[string, readonly AddableMass[], number | undefined, number, number]>([
    ["nothing in stock, near enough bare", [], 2, 200, 0],
    ["nothing in stock, past the tolerance: lead is one more", [], 0.5, 200, 1],
    ["the nearest sum, when nothing says what is near enough", sums([1, 1], [2, 2]), undefined, 202, 2],
    ["the fewest weights that are near enough", sums([1.5, 1], [2, 2]), 0.5, 201.5, 1],
    ["of as many the nearest, near enough or not", sums([1.5, 1], [2, 1]), 0.5, 202, 1],
    ["none that makes it too heavy", sums([2.6, 1], [1, 1]), 0.5, 201, 2],
    ["just not too heavy", sums([2.5, 1], [1, 1]), 0.5, 202.5, 1],
    ["of two as near the fewest", sums([1, 2], [3, 1]), undefined, 203, 1],
  ])("finds %s", (_, addable, toleranceG, gotG, addedCount) => {
    const wish = { wantedG: 202, addable, ...(toleranceG === undefined ? {} : { toleranceG }) };
    expect(massReached(200, wish, 2)).toEqual({ wantedG: 202, gotG, addedCount });
  });

  it("adds nothing to a head that is too heavy, and needs no lead for it", () => {
    expect(massReached(205, { wantedG: 202, addable: sums([0, 0], [2, 1]), toleranceG: 0.5 }, 2)).toEqual({ wantedG: 202, gotG: 205, addedCount: 0 });
  });

  it("needs lead where even the heaviest sum leaves more than the usual tolerance", () => {
    expect(massReached(197, { wantedG: 202, addable: sums([2.9, 1]) }, 2).addedCount).toBe(2);
    expect(massReached(197, { wantedG: 202, addable: sums([3, 1]) }, 2).addedCount).toBe(1);
  });
});

describe("addableMasses", () => {
  it("keeps every mass once, by its fewest weights", () => {
    const set = (massG: number, count: number) => ({ massesG: [], massG, count, fromElsewhere: 0 });
    expect(addableMasses([set(0, 0), set(8, 2), set(4, 1), set(8, 1)])).toEqual(sums([0, 0], [8, 1], [4, 1]));
  });
});
