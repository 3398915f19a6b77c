import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allotHeads, NO_HEAD_LOSS } from "../../../core/selection/allotHeads.ts";
import { byLaw } from "../../support/checkOf.ts";
import { choice, club, given, holding, leastLossBySets, leastSums, someWanted, sumsOf, type Wanted } from "./someWanted.ts";

const wholeScore = fc.integer({ min: 0, max: 4 });
/** Spread evenly, so that no two are alike. */
const anyScore = fc.noBias(fc.integer({ min: 0, max: 400_000_000 })).map((millionths) => millionths / 1e6);
const headsOf = (wanted: readonly Wanted[]) => allotHeads(wanted).allotted.map(({ choice: got }) => got?.head.id ?? null);
const lossOf = (wanted: readonly Wanted[]) => allotHeads(wanted).loss;
const shuffled = (arbitrary: fc.Arbitrary<readonly Wanted[]>) =>
  arbitrary.chain((wanted) => fc.tuple(fc.constant(wanted), fc.shuffledSubarray([...wanted], { minLength: wanted.length })));

/** The sums agree, a loss to a billionth of itself. */
function expectSame(got: number, wanted: number): void {
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-8 + 1e-12 * wanted);
}

describe(byLaw(allotHeads, "trying every way to give up to 6 clubs one of 7 heads each finds nothing better"), () => {
  it("has the least loss, then the most held heads kept, then the least ranks", () => {
    fc.assert(
      fc.property(someWanted({ clubs: 5, heads: 6, score: wholeScore, held: true }), (wanted) => {
        const { allotted, loss } = allotHeads(wanted);
        const sums = sumsOf(
          wanted,
          allotted.map(({ choice: got }) => got?.head.id ?? null),
        );
        expect(sums).toEqual(leastSums(wanted));
        expect(loss).toBe(sums.loss);
      }),
    );
  });

  it("has the least loss of scores that are no whole numbers", () => {
    fc.assert(
      fc.property(someWanted({ clubs: 6, heads: 7, score: anyScore, held: true }), (wanted) => {
        const { robbed, loss } = leastSums(wanted);
        expect(robbed).toBe(0);
        expectSame(lossOf(wanted), loss);
      }),
      { numRuns: 30 },
    );
  });
});

describe(byLaw(allotHeads, "going through every set of heads that may be gone finds the same loss for 12 clubs and 15 heads"), () => {
  it.each([
    ["heads enough", 15],
    ["more clubs than heads", 9],
  ])("has the least loss with %s", (_, heads) => {
    const clubs = fc.integer({ min: 8, max: 12 }).chain((count) => someWanted({ clubs: count, heads, score: anyScore }));
    fc.assert(
      fc.property(clubs, (wanted) => {
        expectSame(lossOf(wanted), leastLossBySets(wanted));
      }),
      { numRuns: 8 },
    );
  });
});

describe(byLaw(allotHeads, "the order of the clubs changes no sum, one more head never costs, a held head is never changed for a worse"), () => {
  it("comes to the same sums in any order of the clubs", () => {
    fc.assert(
      fc.property(shuffled(someWanted({ clubs: 8, heads: 6, score: wholeScore, held: true })), ([wanted, other]) => {
        expect(sumsOf(other, headsOf(other))).toEqual(sumsOf(wanted, headsOf(wanted)));
      }),
    );
  });

  it("gives each club the same in any order of the clubs where no two losses are equal", () => {
    fc.assert(
      fc.property(shuffled(someWanted({ clubs: 8, heads: 8, score: anyScore })), ([wanted, other]) => {
        expect([...given(allotHeads(other))].sort()).toEqual([...given(allotHeads(wanted))].sort());
      }),
    );
  });

  it("never costs more with one more head", () => {
    fc.assert(
      fc.property(someWanted({ clubs: 7, heads: 7, score: anyScore, held: true }), (wanted) => {
        const without = wanted.map((one) => ({ ...one, choices: one.choices.filter(({ head }) => head.id !== 7 || one.held?.headId === 7) }));
        expect(lossOf(wanted)).toBeLessThanOrEqual(lossOf(without) + 1e-8);
      }),
    );
  });

  it("changes a held head only for one that is no further off", () => {
    fc.assert(
      fc.property(someWanted({ clubs: 8, heads: 8, score: anyScore, held: true }), (wanted) => {
        allotHeads(wanted).allotted.forEach(({ choice: got }, at) => {
          const held = wanted[at]?.held;
          expect(held == null || (got !== null && got.score <= held.score + 1e-9)).toBe(true);
        });
      }),
    );
  });

  it("gives no head twice, and none that was not wanted", () => {
    fc.assert(
      fc.property(someWanted({ clubs: 12, heads: 8, score: wholeScore, held: true }), (wanted) => {
        const { allotted } = allotHeads(wanted);
        const got = allotted.flatMap(({ choice: one }) => one?.head.id ?? []);
        expect(new Set(got).size).toBe(got.length);
        allotted.forEach(({ key, choice: one, rank }, at) => {
          expect(key).toBe(wanted[at]?.key);
          expect(rank === null ? null : wanted[at]?.choices[rank]).toBe(one);
        });
      }),
    );
  });
});

describe("allotHeads", () => {
  it("loses less than serving the clubs one after the other", () => {
    /** In order of posting: A 1 × 0, then B 2 × 9 = 18 with head 2. All together: A 1 × 1 with head 2, B 2 × 0.5: 2. */
    const wanted = [club("A", 1, [1, 0], [2, 1]), club("B", 2, [1, 0.5], [2, 9])];
    const answer = allotHeads(wanted);
    expect(given(answer)).toEqual(["A 2", "B 1"]);
    expect(answer.loss).toBe(1 * 1 + 2 * 0.5);
    expect(answer.allotted.map(({ rank }) => rank)).toEqual([1, 0]);
  });

  it("moves a whole chain of clubs for one that has no other head", () => {
    const wanted = [club("A", 1, [1, 0], [2, 3]), club("B", 1, [2, 0], [3, 3]), club("C", 1, [3, 0], [4, 3]), club("D", 1, [1, 50])];
    const answer = allotHeads(wanted);
    expect(given(answer)).toEqual(["A 2", "B 3", "C 4", "D 1"]);
    expect(answer.loss).toBe(3 + 3 + 3 + 50);
  });

  it("lets the weights decide between two clubs", () => {
    const wishes = [
      [1, 0],
      [2, 4],
    ] as const;
    expect(given(allotHeads([club("A", 1, ...wishes), club("B", 1.5, ...wishes)]))).toEqual(["A 2", "B 1"]);
    expect(given(allotHeads([club("A", 1.5, ...wishes), club("B", 1, ...wishes)]))).toEqual(["A 1", "B 2"]);
  });

  it("answers an empty list with nothing", () => {
    expect(allotHeads([])).toEqual({ allotted: [], loss: 0 });
  });

  it("leaves a club without choices without a head", () => {
    const answer = allotHeads([club("A", 2), club("B", 1, [1, 3])]);
    expect(answer.allotted).toEqual([
      { key: "A", choice: null, rank: null },
      { key: "B", choice: choice(1, 3), rank: 0 },
    ]);
    expect(answer.loss).toBe(2 * NO_HEAD_LOSS + 3);
  });

  it("gives heads to as many clubs as can be, whatever it costs, and leaves out the lightest", () => {
    const wanted = [club("A", 1, [1, 0]), club("B", 3, [1, 900]), club("C", 2, [1, 0], [2, 900])];
    expect(given(allotHeads(wanted))).toEqual(["A none", "B 1", "C 2"]);
  });

  it("leaves out the last in the list among equals", () => {
    const wanted = ["A", "B", "C"].map((key) => club(key, 1, [1, 0], [2, 1]));
    expect(given(allotHeads(wanted))).toEqual(["A 1", "B 2", "C none"]);
  });

  it("gives the earlier of two equals the better rank", () => {
    const wishes = [
      [1, 2],
      [2, 5],
      [3, 5],
    ] as const;
    expect(given(allotHeads([club("A", 1, ...wishes), club("B", 1, ...wishes)]))).toEqual(["A 1", "B 2"]);
  });

  it("prefers the better ranks among equal losses", () => {
    expect(given(allotHeads([club("A", 1, [2, 1], [1, 1])]))).toEqual(["A 2"]);
    expect(given(allotHeads([club("A", 1, [1, 1], [2, 1], [3, 1]), club("B", 1, [1, 1], [3, 1])]))).toEqual(["A 1", "B 3"]);
  });

  it("takes losses less than half a billionth apart as equal, and others not", () => {
    expect(given(allotHeads([club("A", 1, [2, 1 + 4e-10], [1, 1])]))).toEqual(["A 2"]);
    expect(given(allotHeads([club("A", 1, [2, 1 + 2e-9], [1, 1])]))).toEqual(["A 1"]);
  });

  it("takes the first setting of a head as its best", () => {
    const wanted: Wanted = { key: "A", weight: 1, choices: [choice(1, 0.2), choice(1, 0.1, "strong 1"), choice(2, 0.15)] };
    expect(allotHeads([wanted])).toEqual({ allotted: [{ key: "A", choice: choice(2, 0.15), rank: 1 }], loss: 0.15 });
    const only = { ...wanted, choices: wanted.choices.slice(0, 2) };
    expect(allotHeads([only])).toEqual({ allotted: [{ key: "A", choice: choice(1, 0.2), rank: 0 }], loss: 0.2 });
  });
});

describe("allotHeads, with heads of confirmed sheets", () => {
  const wishes = [
    [1, 0],
    [2, 3],
    [3, 3.5],
  ] as const;

  it("lets a club keep its head before any other, however urgent", () => {
    expect(given(allotHeads([club("A", 1000, [2, 0]), holding(club("B", 1, [2, 3], [3, 3.5]), 2, 3)]))).toEqual(["A none", "B 2"]);
  });

  it("moves it to a nearer head that is free, and makes room", () => {
    expect(given(allotHeads([club("A", 1, [2, 0]), holding(club("B", 1, ...wishes), 2, 3)]))).toEqual(["A 2", "B 1"]);
  });

  it.each([
    ["as near", 3, "B 4"],
    ["a rounding further off", 3 + 5e-10, "B 4"],
    ["further off", 3 + 2e-9, "B 2"],
  ])("moves it for another club to a head that is %s: %d", (_, score, got) => {
    expect(given(allotHeads([club("A", 1000, [2, 0], [5, 100]), holding(club("B", 1, [2, 3], [4, score]), 2, 3)]))[1]).toBe(got);
  });

  it("keeps the head among equal losses, though its rank is lower", () => {
    expect(given(allotHeads([holding(club("A", 1, [1, 3], [2, 3]), 2, 3)]))).toEqual(["A 2"]);
  });

  it("keeps the most heads among equal losses", () => {
    /** By rank each would rather have the other's. */
    const wanted = [holding(club("A", 1, [2, 2], [1, 2]), 1, 2), holding(club("B", 1, [1, 2], [2, 2]), 2, 2)];
    expect(given(allotHeads(wanted))).toEqual(["A 1", "B 2"]);
    expect(given(allotHeads(wanted.map((one) => ({ ...one, held: null }))))).toEqual(["A 2", "B 1"]);
  });

  it("counts its own head at the score held, when that is the lower now", () => {
    const answer = allotHeads([holding(club("A", 2, [2, 9], [3, 4]), 2, 3)]);
    expect(given(answer)).toEqual(["A 2"]);
    expect(answer.loss).toBe(2 * 3);
  });

  it("counts its own head at what it can be now, when that is the lower", () => {
    const answer = allotHeads([holding(club("A", 2, [2, 1], [3, 2]), 2, 3)]);
    expect(given(answer)).toEqual(["A 2"]);
    expect(answer.loss).toBe(2 * 1);
  });

  it("shows the first setting of its own head that is no further off, or else its first", () => {
    const settings = (limit: number): Wanted => ({
      ...holding(club("A", 1), 1, limit),
      choices: [choice(1, 0.24), choice(1, 0.2, "strong 1"), choice(1, 0.1, "upright")],
    });
    expect(allotHeads([settings(0.2)]).allotted[0]?.choice?.mark).toBe("strong 1");
    expect(allotHeads([settings(0.05)]).allotted[0]?.choice?.mark).toBe("standard");
  });

  it("leaves it without when its own head is not among its choices and none is as near", () => {
    const answer = allotHeads([holding(club("A", 1, [2, 4]), 9, 3)]);
    expect(given(answer)).toEqual(["A none"]);
    expect(answer.loss).toBe(NO_HEAD_LOSS);
  });

  it("leaves out one of two clubs that hold the same head", () => {
    expect(given(allotHeads([holding(club("A", 1, [1, 2]), 1, 2), holding(club("B", 2, [1, 2]), 1, 2)]))).toEqual(["A none", "B 1"]);
  });
});

describe("allotHeads, at its bounds", () => {
  const numbers = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

  it.each([0.001, 1000])("accepts a weight of %d", (weight) => {
    expect(lossOf([club("A", weight, [1, 1])])).toBe(weight);
  });

  it.each([0, -1, 0.000999, 1000.001, ...numbers])("refuses a weight of %d", (weight) => {
    expect(() => allotHeads([club("A", weight, [1, 1])])).toThrow('"field":"weight"');
  });

  it.each([0, 1_000_000])("accepts a score of %d", (score) => {
    expect(lossOf([club("A", 1, [1, score])])).toBe(score);
  });

  it.each([-1e-9, 1_000_000.1, ...numbers])("refuses a score of %d, of whichever choice", (score) => {
    expect(() => allotHeads([club("A", 1, [1, 1], [2, score])])).toThrow('"field":"score"');
    expect(() => allotHeads([holding(club("A", 1, [1, 1], [2, 1]), 1, score)])).toThrow('"field":"held.score"');
  });

  it("refuses more than a thousand clubs", () => {
    const clubs = (count: number) => Array.from({ length: count }, (_, at) => club(String(at), 1, [at, 1]));
    expect(lossOf(clubs(1000))).toBe(1000);
    expect(() => allotHeads(clubs(1001))).toThrow("list-of-wrong-size");
  });

  it("takes no head held for none", () => {
    expect(given(allotHeads([{ ...club("A", 1, [1, 1]), held: null }]))).toEqual(["A 1"]);
  });
});
