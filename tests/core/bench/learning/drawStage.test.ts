import { erf, gamma } from "mathjs";
import { describe, expect, it } from "vitest";
import { drawStage } from "../../../../core/bench/learning/drawStage.ts";
import { gammaQuantile } from "../../../../core/bench/learning/gammaQuantile.ts";
import type { StagePace } from "../../../../core/bench/pace.ts";
import published from "../../../../fixtures/published/chiSquareQuantiles.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../../support/checkOf.ts";

const known: StagePace = { work: "build driver", stage: "toDone", mean: 0.2, kappa: 5, alpha: 4, beta: 0.15 };

/** Share of the gamma distribution below x for a whole or half shape: from 1 − e⁻ˣ or erf √x, a step of one in shape at a time. */
function gammaShare(shape: number, x: number): number {
  const isWhole = Number.isInteger(shape);
  let share = isWhole ? 1 - Math.exp(-x) : erf(Math.sqrt(x));
  for (let a = isWhole ? 1 : 0.5; a < shape; a++) share -= (x ** a * Math.exp(-x)) / gamma(a + 1);
  return share;
}

describe(byTable(drawStage, "chiSquareQuantiles", published), () => {
  it.each(published.rows)("2β/σ² is the chi-square of $freedom degrees of freedom at $chance", ({ freedom, chance, value }) => {
    const { spread } = drawStage({ ...known, alpha: freedom / 2 }, 0.5, chance);
    expect(Math.abs((2 * known.beta) / spread ** 2 - value)).toBeLessThanOrEqual(published.tolerance);
  });
});

describe(byLibrary(drawStage, "mathjs", "the gamma distribution below β/σ² from erf and gamma"), () => {
  it.each([1, 1.5, 2, 4, 4.5, 9.5, 20, 60])("leaves the share asked for below, shape %d", (alpha) => {
    for (const chance of [0.0001, 0.01, 0.2, 0.5, 0.8, 0.99, 0.9999]) {
      const { spread } = drawStage({ ...known, alpha }, 0.5, chance);
      expect(gammaShare(alpha, known.beta / spread ** 2)).toBeCloseTo(chance, 9);
    }
  });
});

describe(byLaw(drawStage, "draws forecast Student's t: two draws of uniform numbers in a grid give its mean and variance"), () => {
  it("keeps mean and variance of what is known", () => {
    const side = 400;
    let locations = 0;
    let locationSquares = 0;
    let variances = 0;
    for (let row = 0; row < side; row++) {
      for (let column = 0; column < side; column++) {
        const { location, spread } = drawStage(known, (row + 0.5) / side, (column + 0.5) / side);
        locations += location;
        locationSquares += (location - known.mean) ** 2;
        variances += spread ** 2;
      }
    }
    const meanVariance = known.beta / (known.alpha - 1);
    expect(locations / side ** 2).toBeCloseTo(known.mean, 10);
    expect(variances / side ** 2 / meanVariance).toBeCloseTo(1, 2);
    expect(locationSquares / side ** 2 / (meanVariance / known.kappa)).toBeCloseTo(1, 1);
  });

  it("mirrors locations about the mean", () => {
    const low = drawStage(known, 0.2, 0.3);
    const high = drawStage(known, 0.8, 0.3);
    expect(high.location - known.mean).toBeCloseTo(known.mean - low.location, 12);
    expect(high.location).toBeGreaterThan(low.location);
    expect(high.spread).toBe(low.spread);
  });
});

describe("drawStage", () => {
  it("gives the mean itself at the middle", () => {
    expect(drawStage(known, 0.5, 0.1).location).toBeCloseTo(0.2, 14);
  });

  it("comes to what is known when much was seen", () => {
    const drawn = drawStage({ ...known, kappa: 1e12, alpha: 1e12, beta: 0.04e12 }, 0.9, 0.01);
    expect(drawn.location).toBeCloseTo(0.2, 5);
    expect(drawn.spread).toBeCloseTo(0.2, 5);
  });

  it.each([
    ["mean", { ...known, mean: 5.1 }, 0.5, 0.5],
    ["mean", { ...known, mean: Number.NaN }, 0.5, 0.5],
    ["kappa", { ...known, kappa: 0 }, 0.5, 0.5],
    ["alpha", { ...known, alpha: 0.99 }, 0.5, 0.5],
    ["beta", { ...known, beta: -0.01 }, 0.5, 0.5],
    ["uMean", known, 0, 0.5],
    ["uMean", known, 1, 0.5],
    ["uSpread", known, 0.5, 0],
    ["uSpread", known, 0.5, 1],
  ] as const)("refuses a %s that cannot be", (field, stage, uMean, uSpread) => {
    expect(() => drawStage(stage, uMean, uSpread)).toThrow(expect.objectContaining({ facts: expect.objectContaining({ field }) }));
  });

  it("takes the bounds themselves", () => {
    expect(() => drawStage({ ...known, mean: -5, kappa: 1e-6, alpha: 1, beta: 0 }, 1e-12, 1 - 1e-12)).not.toThrow();
  });
});

describe("gammaQuantile", () => {
  it("goes on smoothly where the first guess is taken", () => {
    for (const u of [1e-6, 0.1, 0.5, 0.9, 1 - 1e-6]) {
      expect(gammaQuantile(10_000.01, u) / gammaQuantile(10_000, u)).toBeCloseTo(1 + 0.01 / 10_000, 5);
    }
  });

  it("is −ln(1 − u) at shape 1, into both tails", () => {
    for (const u of [1e-9, 1e-4, 0.3, 0.7, 1 - 1e-6]) expect(gammaQuantile(1, u) / -Math.log1p(-u)).toBeCloseTo(1, 8);
    expect(gammaQuantile(1, 1 - 1e-9) / -Math.log(1e-9)).toBeCloseTo(1, 5);
  });
});
