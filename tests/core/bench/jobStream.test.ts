import { describe, expect, it } from "vitest";
import { jobStream } from "../../../core/bench/jobStream.ts";

const key = { seed: 7, sample: 0, order: 1, job: 1 };

/** Pearson correlation of two columns; that of n independent pairs lies within 4/√n of 0 but for 1 draw in 16,000. */
function correlation(xs: readonly number[], ys: readonly number[]): number {
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [mx, my] = [mean(xs), mean(ys)];
  const covariance = mean(xs.map((x, at) => (x - mx) * ((ys[at] ?? 0) - my)));
  return covariance / Math.sqrt(mean(xs.map((x) => (x - mx) ** 2)) * mean(ys.map((y) => (y - my) ** 2)));
}

const SAMPLES = Array.from({ length: 10_000 }, (_, sample) => sample);

function nth(part: Partial<typeof key>, place: number): number {
  const uniform = jobStream({ ...key, ...part });
  return Array.from({ length: place + 1 }, uniform)[place] ?? 0;
}

describe("jobStream", () => {
  it("repeats itself for the same key", () => {
    expect(nth({}, 4)).toBe(nth({}, 4));
  });

  it.each(["seed", "sample", "order", "job"] as const)("differs when only the %s differs", (part) => {
    expect(nth({ [part]: 99 }, 0)).not.toBe(nth({}, 0));
  });

  it("fills ten bins evenly over neighbouring samples (chi-square with 9 degrees of freedom, 99.9 % below 27.9)", () => {
    for (const place of [0, 1, 8]) {
      const bins = new Array<number>(10).fill(0);
      for (const sample of SAMPLES) {
        const bin = Math.floor(nth({ sample }, place) * 10);
        bins[bin] = (bins[bin] ?? 0) + 1;
      }
      expect(bins.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0)).toBeLessThan(27.9);
    }
  });

  it.each([
    ["neighbouring numbers", {}, 0, {}, 1],
    ["neighbouring jobs", {}, 0, { job: 2 }, 0],
    ["neighbouring orders", {}, 2, { order: 2 }, 2],
    ["neighbouring seeds", {}, 1, { seed: 8 }, 1],
  ])("leaves %s uncorrelated", (_, first, firstPlace, second, secondPlace) => {
    const xs = SAMPLES.map((sample) => nth({ ...first, sample }, firstPlace));
    const ys = SAMPLES.map((sample) => nth({ ...second, sample }, secondPlace));
    expect(Math.abs(correlation(xs, ys))).toBeLessThan(4 / Math.sqrt(SAMPLES.length));
  });
});
