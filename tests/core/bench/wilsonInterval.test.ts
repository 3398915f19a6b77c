import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wilsonInterval } from "../../../core/bench/wilsonInterval.ts";
import { DomainError } from "../../../core/errors.ts";
import published from "../../../fixtures/published/scoreIntervals.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const counts = fc.integer({ min: 1, max: 2000 }).chain((trials) => fc.integer({ min: 0, max: trials }).map((successes) => ({ successes, trials })));

describe(byTable(wilsonInterval, "scoreIntervals", published), () => {
  it.each(published.rows)("$successes of $trials", ({ successes, trials, low, high }) => {
    const found = wilsonInterval(successes, trials, published.confidence);
    expect(Math.abs(found.low - low)).toBeLessThanOrEqual(published.tolerance);
    expect(Math.abs(found.high - high)).toBeLessThanOrEqual(published.tolerance);
  });
});

describe(byLaw(wilsonInterval, "its bounds are the shares whose score test is at the limit"), () => {
  it("solves |p̂ − p| = z·√(p(1 − p)/n) at both ends", () => {
    // The 95 % quantile of the standard normal distribution, from printed tables.
    const z = 1.6448536269514722;
    fc.assert(
      fc.property(counts, ({ successes, trials }) => {
        const { low, high } = wilsonInterval(successes, trials, 0.9);
        for (const [bound, atEnd] of [
          [low, successes === 0],
          [high, successes === trials],
        ] as const) {
          if (!atEnd) expect(Math.abs(successes / trials - bound)).toBeCloseTo(z * Math.sqrt((bound * (1 - bound)) / trials), 10);
        }
      }),
      { numRuns: 100 },
    );
  });

  it("turns over when successes and failures change places", () => {
    fc.assert(
      fc.property(counts, ({ successes, trials }) => {
        const one = wilsonInterval(successes, trials, 0.9);
        const other = wilsonInterval(trials - successes, trials, 0.9);
        expect(other.low).toBeCloseTo(1 - one.high, 12);
        expect(other.high).toBeCloseTo(1 - one.low, 12);
      }),
      { numRuns: 100 },
    );
  });
});

describe("wilsonInterval", () => {
  it("begins at 0 without a success and ends at 1 without a failure", () => {
    expect(wilsonInterval(0, 7, 0.9).low).toBe(0);
    expect(wilsonInterval(7, 7, 0.9).high).toBe(1);
  });

  it.each([
    [1, 0, 0.9],
    [-1, 5, 0.9],
    [6, 5, 0.9],
    [1.5, 5, 0.9],
    [1, 5.5, 0.9],
    [Number.NaN, 5, 0.9],
    [1, Number.POSITIVE_INFINITY, 0.9],
    [1, 5, 0],
    [1, 5, 1],
    [1, 5, Number.NaN],
  ])("refuses %d of %d at %d", (successes, trials, confidence) => {
    expect(() => wilsonInterval(successes, trials, confidence)).toThrow(DomainError);
  });
});
