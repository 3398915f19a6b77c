import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { backOff, clampWait } from "../../../bot/outbox/backOff.ts";
import { instant } from "../../../core/kinds.ts";

const NOON = instant(Date.UTC(2027, 4, 3, 12));
const chance = fc.double({ min: 0, max: 0.999999, noNaN: true });

describe("backOff", () => {
  it.each([
    [1, 1000, 2000],
    [2, 2000, 4000],
    [3, 4000, 8000],
    [8, 128_000, 256_000],
    [9, 150_000, 300_000],
    [100_000, 150_000, 300_000],
  ])("waits after try %i between %i and %i ms", (tries, leastMs, mostMs) => {
    expect(backOff(NOON, tries, null, 0)).toBe(NOON + leastMs);
    fc.assert(
      fc.property(chance, (random) => {
        const waitMs = backOff(NOON, tries, null, random) - NOON;
        expect(waitMs).toBeGreaterThanOrEqual(leastMs);
        expect(waitMs).toBeLessThanOrEqual(mostMs);
      }),
      { seed: 1 },
    );
  });

  it.each([
    [0, 0],
    [1500, 1500],
    [0.2, 1],
    [-5, 0],
    [3_600_000, 600_000],
  ])("told %d ms, waits %i ms", (afterMs, waitMs) => {
    expect(backOff(NOON, 3, afterMs, 0.5)).toBe(NOON + waitMs);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("told %d, backs off by itself", (afterMs) => {
    expect(backOff(NOON, 1, afterMs, 0)).toBe(NOON + 1000);
  });
});

describe("clampWait", () => {
  it("leaves every wait that this program can have made", () => {
    expect(clampWait(NOON, instant(NOON + 600_000), false)).toBe(NOON + 600_000);
    expect(clampWait(NOON, instant(NOON - 1), true)).toBe(NOON - 1);
  });

  it("brings back a longer one: now when untried, else after five minutes", () => {
    expect(clampWait(NOON, instant(NOON + 600_001), true)).toBe(NOON);
    expect(clampWait(NOON, instant(NOON + 600_001), false)).toBe(NOON + 300_000);
  });
});
