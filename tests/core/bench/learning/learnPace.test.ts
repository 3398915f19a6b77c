import fc from "fast-check";
import { erf, gamma } from "mathjs";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { describe, expect, it } from "vitest";
import { drawStage } from "../../../../core/bench/learning/drawStage.ts";
import { learnPace } from "../../../../core/bench/learning/learnPace.ts";
import type { StageSeen } from "../../../../core/bench/learning/presses.ts";
import { defaultPace, defaultSpreads, type Pace, type Stage, type StagePace } from "../../../../core/bench/pace.ts";
import { normalQuantile } from "../../../../core/bench/standardNormal.ts";
import { id } from "../../../../core/kinds.ts";
import { byLaw, byLibrary } from "../../../support/checkOf.ts";

const seen = (order: number, stage: Stage, logPace: number, spreadShare = 1): StageSeen => ({
  order: id<"order">(order),
  work: "build driver",
  stage,
  logPace,
  spreadShare,
});
const paceOf = (pace: Pace, stage: Stage): StagePace => {
  const found = pace.learned.find((one) => one.stage === stage);
  if (found === undefined) throw new Error(`no ${stage}`);
  return found;
};
const sameJobs = { ...defaultSpreads, job: 0 };

/** Chance that the next single step stays below a bound, over a grid of draws. */
function forecastBelow(stage: StagePace, bound: number): number {
  const side = 300;
  let sum = 0;
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      const { location, spread } = drawStage(stage, (row + 0.5) / side, (column + 0.5) / side);
      sum += (1 + erf((bound - location) / spread / Math.SQRT2)) / 2;
    }
  }
  return sum / side ** 2;
}

/**
 * Mean of μ and chance of the next step by adding up over all μ and σ²: prior σ² ~ IG(4, 3·0.8·s²), μ ~ N(0, σ²/4); a row ~ N(μ + σ²(1 − c²)/2, c²σ²).
 */
function bruteForce(rows: readonly StageSeen[], bound: number) {
  const alpha = 4;
  const beta = 3 * 0.8 * defaultSpreads.step ** 2;
  let total = 0;
  let means = 0;
  let variances = 0;
  let below = 0;
  for (let logVariance = Math.log(0.002); logVariance < Math.log(2); logVariance += 0.02) {
    const variance = Math.exp(logVariance);
    const ofVariance = ((beta ** alpha / gamma(alpha)) * Math.exp(-beta / variance)) / variance ** alpha;
    for (let mean = -1.2; mean < 1.2; mean += 0.005) {
      const ofMean = Math.exp((-4 * mean ** 2) / (2 * variance)) / Math.sqrt(variance);
      const ofRows = rows.reduce((product, { logPace, spreadShare: c }) => {
        const away = logPace - mean - (variance * (1 - c ** 2)) / 2;
        return (product * Math.exp(-(away ** 2) / (2 * c ** 2 * variance))) / Math.sqrt(variance);
      }, 1);
      const density = ofVariance * ofMean * ofRows;
      total += density;
      means += density * mean;
      variances += density * variance;
      below += (density * (1 + erf((bound - mean) / Math.sqrt(2 * variance)))) / 2;
    }
  }
  return { mean: means / total, variance: variances / total, below: below / total };
}

describe(byLibrary(learnPace, "mathjs", "the posterior added up over all means and variances"), () => {
  it.each([
    ["one step seen", [0.3]],
    ["four steps seen", [0.1, 0.35, -0.05, 0.2]],
    ["steps far apart", [-0.6, 0.5, 0.1, 0.9, -0.4]],
  ])("is exact where a stage is one step and jobs do not differ: %s", (_, paces) => {
    const rows = paces.map((logPace, at) => seen(at + 1, "toDone", logPace));
    const stage = paceOf(learnPace(rows, sameJobs), "toDone");
    const exact = bruteForce(rows, 0.4);
    expect(stage.mean).toBeCloseTo(exact.mean, 4);
    expect(stage.beta / (stage.alpha - 1)).toBeCloseTo(exact.variance, 3);
    expect(forecastBelow(stage, 0.4)).toBeCloseTo(exact.below, 2.5);
  });

  it("is within 0.01 where a stage has many steps", () => {
    const rows = [0.1, 0.25, 0.02, 0.2, 0.12, 0.3].map((logPace, at) => seen(at + 1, "toDone", logPace, 0.5));
    const stage = paceOf(learnPace(rows, sameJobs), "toDone");
    const exact = bruteForce(rows, 0.4);
    expect(Math.abs(stage.mean - exact.mean)).toBeLessThan(0.01);
    expect(Math.abs(stage.beta / (stage.alpha - 1) - exact.variance)).toBeLessThan(0.01);
    expect(Math.abs(forecastBelow(stage, 0.4) - exact.below)).toBeLessThan(0.01);
  });
});

describe(byLaw(learnPace, "the order in which stages were seen does not matter"), () => {
  it("learns the same from a list turned about", () => {
    const row = fc.record({
      order: fc.integer({ min: 1, max: 8 }),
      stage: fc.constantFrom<Stage>("toGlue", "toDone", "check"),
      logPace: fc.double({ min: -1, max: 1, noNaN: true }),
      share: fc.double({ min: 0.3, max: 1.4, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 20 }), (rows) => {
        const list = rows.map(({ order, stage, logPace, share }) => seen(order, stage, logPace, share));
        const one = learnPace(list, defaultSpreads);
        const other = learnPace(list.toReversed(), defaultSpreads);
        expect(other.spreads.job).toBeCloseTo(one.spreads.job, 9);
        expect(other.learned.map(({ stage }) => stage)).toEqual(one.learned.map(({ stage }) => stage));
        one.learned.forEach((stage, at) => {
          expect(other.learned[at]?.mean).toBeCloseTo(stage.mean, 9);
          expect(other.learned[at]?.beta).toBeCloseTo(stage.beta, 9);
        });
      }),
      { numRuns: 40 },
    );
  });
});

/** Made jobs: sums of steps that are worked one after another. */
function madeJobs(count: number, truth: { readonly job: number; readonly mean: number; readonly step: number }): readonly StageSeen[] {
  const source = xoroshiro128plus(20270503);
  const deviate = (): number => normalQuantile(((source.next() >>> 0) + 0.5) / 4294967296);
  const stages: readonly (readonly [Stage, readonly number[]])[] = [
    ["toGlue", [1, 1.5, 0.5, 1]],
    ["toDone", [0.5, 1.5, 1, 1.5]],
  ];
  return Array.from({ length: count }, (_, at) => {
    const job = truth.job * deviate();
    return stages.map(([stage, minutes]) => {
      const usual = minutes.reduce((sum, one) => sum + one, 0);
      const took = minutes.reduce((sum, one) => sum + one * Math.exp(truth.mean + job + truth.step * deviate()), 0);
      return seen(at + 1, stage, Math.log(took / usual), Math.hypot(...minutes) / usual);
    });
  }).flat();
}

describe(byLaw(learnPace, "of many made jobs it finds the pace, the spread of a step and the spread of jobs they were made with"), () => {
  it.each([
    { job: 0.1, mean: 0.15, step: 0.25 },
    { job: 0.2, mean: -0.2, step: 0.3 },
    { job: 0.05, mean: 0, step: 0.15 },
  ])("finds $job, $mean and $step", (truth) => {
    const pace = learnPace(madeJobs(1500, truth), defaultSpreads);
    expect(Math.abs(pace.spreads.job - truth.job)).toBeLessThan(0.01);
    for (const stage of pace.learned) {
      expect(Math.abs(stage.mean - truth.mean)).toBeLessThan(0.02);
      expect(Math.abs(Math.sqrt(stage.beta / stage.alpha) - truth.step)).toBeLessThan(0.02);
    }
  });

  it("draws the spread of jobs to the fixed one when few were seen, and well below it when many do not differ", () => {
    const few = learnPace(madeJobs(3, { job: 0, mean: 0, step: 0.25 }), defaultSpreads).spreads.job;
    const many = learnPace(madeJobs(1500, { job: 0, mean: 0, step: 0.25 }), defaultSpreads).spreads.job;
    expect(Math.abs(few - 0.1)).toBeLessThan(0.02);
    expect(many).toBeLessThan(0.05);
    expect(many).toBeGreaterThanOrEqual(0);
  });

  it("knows its means less well when jobs differ: a job's two stages are slow together", () => {
    const rows = madeJobs(40, { job: 0.3, mean: 0, step: 0.2 });
    expect(paceOf(learnPace(rows, defaultSpreads), "toDone").kappa).toBeLessThan(paceOf(learnPace(rows, sameJobs), "toDone").kappa);
  });
});

describe("learnPace", () => {
  it("is the fixed spreads alone when nothing was seen", () => {
    expect(learnPace([], defaultSpreads)).toEqual(defaultPace);
  });

  it("never learns waits, and leaves works apart", () => {
    const rows = [seen(1, "toDone", 0.8), { ...seen(2, "toDone", -0.8), work: "build iron" }];
    const pace = learnPace(rows, defaultSpreads);
    expect(pace.spreads.wait).toBe(defaultSpreads.wait);
    expect(pace.spreads.step).toBe(defaultSpreads.step);
    expect(pace.learned.map(({ work, mean }) => [work, Math.sign(mean)])).toEqual([
      ["build driver", 1],
      ["build iron", -1],
    ]);
  });

  it("forecasts one step with the variance of the fixed spread before it learns: the prior's numbers", () => {
    const stage = paceOf(learnPace([seen(1, "check", 0, 10)], sameJobs), "check");
    expect(stage.kappa).toBeCloseTo(4.01, 10);
    expect(stage.alpha).toBe(4.5);
    expect((3 * defaultSpreads.step ** 2 * 4) / 5).toBeCloseTo(0.15, 10);
    expect(stage.beta).toBeGreaterThan(0.15);
    expect(stage.beta).toBeLessThan(0.17);
  });

  it.each([
    ["spreads.step", [], { ...defaultSpreads, step: 0.009 }],
    ["spreads.step", [], { ...defaultSpreads, step: 3.1 }],
    ["spreads.job", [], { ...defaultSpreads, job: -0.01 }],
    ["spreads.wait", [], { ...defaultSpreads, wait: Number.NaN }],
    ["order", [seen(1.5, "check", 0)], defaultSpreads],
    ["logPace", [seen(1, "check", 5.1)], defaultSpreads],
    ["logPace", [seen(1, "check", Number.NaN)], defaultSpreads],
    ["spreadShare", [seen(1, "check", 0, 0.009)], defaultSpreads],
    ["spreadShare", [seen(1, "check", 0, 10.1)], defaultSpreads],
    ["stage", [{ ...seen(1, "check", 0), stage: "polish" as Stage }], defaultSpreads],
  ])("refuses a %s that cannot be", (field, rows, spreads) => {
    expect(() => learnPace(rows, spreads)).toThrow(expect.objectContaining({ facts: expect.objectContaining({ field }) }));
  });

  it("takes the bounds themselves", () => {
    expect(() => learnPace([seen(0, "check", 5, 0.01), seen(1, "check", -5, 10)], { step: 0.01, job: 3, wait: 0 })).not.toThrow();
  });
});
