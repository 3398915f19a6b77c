import { combinations } from "mathjs";
import { describe, expect, it } from "vitest";
import { millimetres } from "../../../core/quantity/units.ts";
import { weightSets, weightsOfSet } from "../../../core/selection/weightSets.ts";
import { byLaw, byLibrary } from "../../support/checkOf.ts";
import { heel, rear, someScrew, toe } from "./someWeights.ts";

const kinds = (count: number, free: number) => Array.from({ length: count }, (_, at) => someScrew(at + 1, { free }));

describe(byLibrary(weightSets, "mathjs", "counting combinations with repetition"), () => {
  it.each([
    [5, 2],
    [7, 3],
    [12, 4],
  ])("fills %d kinds into %d ports at one place in so many ways", (count, ports) => {
    const sets = weightSets(
      kinds(count, 4),
      Array.from({ length: ports }, () => rear),
    );
    expect(sets.length).toBe(combinations(count + ports, ports));
  });
});

describe(byLaw(weightSets, "ports at different places are told apart: every kind or none in each"), () => {
  it("counts powers when there is enough of every kind", () => {
    expect(weightSets(kinds(5, 3), [heel, toe, rear]).length).toBe(6 ** 3);
  });

  it("counts one less where a single screw would have to be in both ports", () => {
    expect(weightSets(kinds(1, 1), [heel, toe]).map(({ massesG }) => massesG)).toEqual([
      [0, 0],
      [0, 1],
      [1, 0],
    ]);
  });
});

describe("weightSets", () => {
  it("has nothing but the bare head without ports or without stock", () => {
    const bare = { massG: 0, count: 0, fromElsewhere: 0 };
    expect(weightSets(kinds(3, 2), [])).toEqual([{ ...bare, massesG: [] }]);
    expect(weightSets([someScrew(4, { free: 0 })], [toe])).toEqual([{ ...bare, massesG: [0] }]);
  });

  it("counts two rows of one mass as one kind, and what does not come out of the player's bin", () => {
    const stock = [someScrew(4), someScrew(4, { place: "Bin", inPlayersBin: true })];
    expect(weightSets(stock, [rear, rear])).toEqual([
      { massesG: [0, 0], massG: 0, count: 0, fromElsewhere: 0 },
      { massesG: [4, 0], massG: 4, count: 1, fromElsewhere: 0 },
      { massesG: [4, 4], massG: 8, count: 2, fromElsewhere: 1 },
    ]);
  });

  it("takes 45 masses for three ports and no more", () => {
    const ports = [heel, toe, rear];
    expect(weightSets(kinds(45, 1), ports).length).toBeGreaterThan(80_000);
    expect(() => weightSets(kinds(46, 1), ports)).toThrow("screwMasses");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1])("refuses a mass, a count or a place of %d", (value) => {
    expect(() => weightSets([someScrew(value)], [toe])).toThrow("quantity-out-of-range");
    expect(() => weightSets([someScrew(1, { free: value })], [toe])).toThrow("quantity-out-of-range");
    expect(() => weightSets([], [{ ...toe, fromCapMm: millimetres(value) }])).toThrow("quantity-out-of-range");
  });
});

describe("weightsOfSet", () => {
  it("gives every port its own screw, the player's first, and none to an empty port", () => {
    const stock = [someScrew(4), someScrew(4, { place: "Bin", inPlayersBin: true }), someScrew(6)];
    const given = weightsOfSet({ massesG: [4, 0, 4], massG: 8, count: 2, fromElsewhere: 1 }, stock);
    expect(given.map((weight) => weight?.place ?? null)).toEqual(["Bin", null, "Rack 1"]);
  });
});
