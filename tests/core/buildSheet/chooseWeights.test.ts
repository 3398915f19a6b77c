import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chooseWeights, weightSets } from "../../../core/buildSheet/chooseWeights.ts";
import { someWeight, stocked } from "./someParts.ts";

fc.configureGlobal({ seed: 20270503 });

const partsIn = (weights: readonly { count: number }[]) => weights.reduce((total, { count }) => total + count, 0);

describe("chooseWeights", () => {
  it("agrees with trying every pair: the fewest parts within the tolerance, else the heaviest that is not too heavy", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 20 }), { maxLength: 6 }),
        fc.double({ min: -5, max: 45, noNaN: true }),
        (massesG, missingG) => {
          const tried = [[0], ...massesG.map((one) => [one]), ...massesG.flatMap((one) => massesG.map((other) => [one, other]))].map((pair) => ({
            count: pair[0] === 0 ? 0 : pair.length,
            massG: pair.reduce((total, massG) => total + massG, 0),
            offG: Math.abs(pair.reduce((total, massG) => total + massG, 0) - missingG),
          }));
          const chosen = chooseWeights(
            weightSets(
              massesG.map((massG) => stocked(someWeight(massG))),
              2,
            ),
            missingG,
            0.8,
          );
          const within = tried.filter(({ offG }) => offG <= 0.8 + 1e-9);
          const offG = Math.abs(chosen.massG - missingG);
          if (within.length > 0) {
            const fewest = Math.min(...within.map(({ count }) => count));
            expect(partsIn(chosen.weights)).toBe(fewest);
            expect(offG).toBeCloseTo(Math.min(...within.filter(({ count }) => count === fewest).map((pair) => pair.offG)), 6);
          } else {
            const notTooHeavy = tried.filter(({ massG }) => massG <= missingG);
            expect(chosen.massG).toBe(Math.max(0, ...notTooHeavy.map(({ massG }) => massG)));
          }
        },
      ),
    );
  });

  it("takes no more of a weight than is free", () => {
    const sets = weightSets([stocked(someWeight(4), { free: 1 })], 2);
    expect(sets.map(({ massG }) => massG)).toEqual([0, 4]);
  });

  it("has nothing but the bare head without ports", () => {
    expect(weightSets([stocked(someWeight(4))], 0)).toEqual([{ massG: 0, weights: [] }]);
  });
});
