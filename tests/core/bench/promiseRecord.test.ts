import fc from "fast-check";
import { all, create, type FactoryFunctionMap } from "mathjs";
import { describe, expect, it } from "vitest";
import { type PromiseKept, promiseRecord } from "../../../core/bench/promiseRecord.ts";
import { wilsonInterval } from "../../../core/bench/wilsonInterval.ts";
import { DomainError } from "../../../core/errors.ts";
import { type Instant, instant } from "../../../core/kinds.ts";
import { byLaw, byLibrary } from "../../support/checkOf.ts";
import { inMinutes, MIN } from "./benchBuilders.ts";

const math = create(all as FactoryFunctionMap);

/** A promise of minute 25 with a likely time of minute 20, in hand at a minute. */
const inHand = (minutes: number, extra: Partial<PromiseKept> = {}): PromiseKept => ({
  promiseAt: inMinutes(25),
  likelyAt: inMinutes(20),
  inHandAt: inMinutes(minutes),
  ...extra,
});

const anyRows = fc.array(fc.integer({ min: -60, max: 60 }), { minLength: 1, maxLength: 40 });

describe(byLibrary(promiseRecord, "mathjs", "quantiles of the minutes early, mean of the losses"), () => {
  it("agrees on any record", () => {
    fc.assert(
      fc.property(anyRows, (late) => {
        const found = promiseRecord(late.map((minutes) => inHand(25 + minutes)));
        const early = late.map((minutes) => -minutes);
        for (const [share, minutes] of [
          [0.1, found.earlyMin?.tenth],
          [0.5, found.earlyMin?.median],
          [0.9, found.earlyMin?.nineTenths],
        ] as const) {
          expect(minutes).toBeCloseTo(Number(math.quantileSeq(early, share)), 9);
        }
        const loss = late.map((minutes) => (minutes >= 0 ? 0.9 * minutes : -0.1 * minutes));
        expect(found.promiseLossMin).toBeCloseTo(math.mean(loss), 9);
        expect(found.likelyLossMin).toBeCloseTo(math.mean(late.map((minutes) => Math.abs(minutes + 5) / 2)), 9);
      }),
      { numRuns: 100 },
    );
  });
});

describe(byLaw(promiseRecord, "kept and missed are all there are; a later promise is never kept less often"), () => {
  it("counts every row once", () => {
    fc.assert(
      fc.property(anyRows, fc.integer({ min: 0, max: 30 }), (late, more) => {
        const rows = late.map((minutes) => inHand(25 + minutes));
        const found = promiseRecord(rows);
        expect(found.keptCount + found.misses.length).toBe(late.length);
        const laxer = promiseRecord(rows.map((row) => ({ ...row, promiseAt: instant(row.promiseAt + more * MIN) })));
        expect(laxer.keptCount).toBeGreaterThanOrEqual(found.keptCount);
      }),
      { numRuns: 100 },
    );
  });
});

describe("promiseRecord", () => {
  // By hand: 3 early, 1 early, to the minute, 4 late.
  const four = promiseRecord([inHand(22), inHand(24), inHand(25), inHand(29)]);

  it("keeps a promise to its very minute", () => {
    expect(four).toMatchObject({ count: 4, keptCount: 3, coverage: 0.75 });
    expect(promiseRecord([inHand(25, { inHandAt: instant(inMinutes(25) + 1) })]).keptCount).toBe(0);
  });

  it("puts the 90 % interval around the share", () => {
    expect(four.coverageInterval).toEqual(wilsonInterval(3, 4, 0.9));
  });

  it("says how early, minutes late below 0", () => {
    // In order −4, 0, 1, 3: a tenth of the way is 3/10 from the first to the second.
    expect(four.earlyMin?.tenth).toBeCloseTo(-2.8, 9);
    expect(four.earlyMin?.median).toBeCloseTo(0.5, 9);
    expect(four.earlyMin?.nineTenths).toBeCloseTo(2.4, 9);
  });

  it("weighs a minute late nine times a minute early at the promise, alike at the likely time", () => {
    // Promise: 0.3, 0.1, 0 and 3.6; likely time: 2, 4, 5 and 9 late, halved.
    expect(four.promiseLossMin).toBeCloseTo(4 / 4, 9);
    expect(four.likelyLossMin).toBeCloseTo(10 / 4, 9);
  });

  it("lists misses with what their rows say more, the furthest first", () => {
    const { misses } = promiseRecord([
      { ...inHand(26), number: 41 },
      { ...inHand(20), number: 42 },
      { ...inHand(40), number: 43 },
    ]);
    expect(misses.map(({ row, lateMin }) => [row.number, lateMin])).toEqual([
      [43, 15],
      [41, 1],
    ]);
  });

  it("leaves an order without a likely time out of its loss alone", () => {
    const found = promiseRecord([inHand(22, { likelyAt: null }), inHand(24)]);
    expect(found.likelyLossMin).toBeCloseTo(2, 9);
    expect(found.count).toBe(2);
    expect(promiseRecord([inHand(22, { likelyAt: null })]).likelyLossMin).toBeNull();
  });

  it("says nothing of no promises", () => {
    expect(promiseRecord([])).toEqual({
      count: 0,
      keptCount: 0,
      coverage: null,
      coverageInterval: null,
      earlyMin: null,
      likelyLossMin: null,
      promiseLossMin: null,
      misses: [],
    });
  });

  it.each(["promiseAt", "likelyAt", "inHandAt"] as const)("refuses a %s that is no moment", (field) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1]) {
      expect(() => promiseRecord([inHand(22), inHand(23, { [field]: value as Instant })])).toThrow(DomainError);
    }
    expect(promiseRecord([inHand(23, { [field]: instant(0) })]).count).toBe(1);
  });
});
