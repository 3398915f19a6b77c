import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MeasuredHead } from "../../../core/buildSheet/parts.ts";
import type { HeadChoice, Target } from "../../../core/buildSheet/plan.ts";
import { afterBend } from "../../../core/head/afterBend.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { chooseHeads } from "../../../core/selection/chooseHeads.ts";
import { defaultSelectionTolerances as tolerances } from "../../../core/selection/selectionTolerances.ts";
import { byLaw } from "../../support/checkOf.ts";
import { someTarget } from "../buildSheet/someParts.ts";
import { someDrivers, someWedges, twoSleeves } from "./someStocks.ts";
import { tryEverything } from "./tryEverything.ts";

const sums = [
  [0, 0],
  [2, 1],
  [4, 1],
  [6, 2],
  [8, 2],
] as const;

const driverWish = fc
  .record({
    hand: fc.constantFrom("right" as const, "left" as const),
    squaredLoftDeg: fc.integer({ min: 32, max: 42 }).map((quarters) => quarters / 4),
    soledFaceDeg: fc.option(fc.constantFrom(0, 0.5)),
    seatedLieDeg: fc.option(fc.constantFrom(57.5, 58)),
  })
  .map((wish) => someTarget(wish));
const wedgeWish = fc
  .record({
    squaredLoftDeg: fc.integer({ min: 104, max: 116 }).map((halves) => halves / 2),
    seatedLieDeg: fc.option(fc.constantFrom(63, 64, 65)),
    bounceDeg: fc.option(fc.constantFrom(8, 10, 12)),
  })
  .map((wish) => someTarget({ ...wish, club: "sw" as Target["club"], headModel: null }));

const order = fc.oneof(
  fc.record({ target: driverWish, heads: someDrivers, wantedG: fc.option(fc.constantFrom(200, 203)) }),
  fc.record({ target: wedgeWish, heads: someWedges, wantedG: fc.option(fc.constant(302)) }),
);
type Order = typeof order extends fc.Arbitrary<infer T> ? T : never;

const ours = ({ target, heads, wantedG }: Order): readonly HeadChoice[] => {
  const addable = sums.map(([massG, count]) => ({ massG, count }));
  const massWish = () => (wantedG === null ? null : { wantedG, addable, toleranceG: 0.8 });
  return chooseHeads({ target: { ...target, headModel: null }, heads, sleeves: twoSleeves, tolerances, massWish });
};

const plain = ({ target, heads, wantedG }: Order) =>
  tryEverything({ target, heads, sleeves: twoSleeves, ...(wantedG === null ? {} : { mass: { wantedG, toleranceG: 0.8, sums } }) });

const shown = ({ head, mark, bend, score }: HeadChoice) => [
  head.serial,
  mark ?? "",
  expect.closeTo(bend?.loftChangeDeg ?? 0, 5),
  expect.closeTo(bend?.lieChangeDeg ?? 0, 5),
  expect.closeTo(score, 5),
];

describe(byLaw(chooseHeads, "trying every head at every mark with every bend, and sorting all of it, finds the same order of heads"), () => {
  it("finds the same heads, marks and bends in the same order", () => {
    fc.assert(
      fc.property(order, (asked) => {
        const all = plain(asked);
        const onceEach = all.filter(({ serial }, at) => all.findIndex((one) => one.serial === serial) === at);
        expect(onceEach.map((one) => [one.serial, one.mark, one.loftBendDeg, one.lieBendDeg, one.score])).toEqual(ours(asked).map(shown));
      }),
    );
  });

  it("never scores worse by a band than the nearest setting of any head", () => {
    fc.assert(
      fc.property(someWedges, wedgeWish, (heads, target) => {
        const [best] = ours({ target, heads, wantedG: null });
        const nearest = Math.min(...plain({ target, heads, wantedG: null }).map(({ score }) => score));
        expect(best?.score).toBeLessThan(nearest + tolerances.scoreBand);
      }),
      { numRuns: 50 },
    );
  });
});

describe(byLaw(chooseHeads, "the order of the stock changes nothing, and another head or sleeve makes no choice worse"), () => {
  it("does not depend on the order of heads and sleeves", () => {
    const shuffled = order.chain((asked) =>
      fc.tuple(
        fc.constant(asked),
        fc.shuffledSubarray([...asked.heads], { minLength: asked.heads.length }).map((heads) => ({ ...asked, heads })),
      ),
    );
    fc.assert(
      fc.property(shuffled, ([asked, other]) => {
        expect(ours(other as Order)).toEqual(ours(asked));
      }),
    );
  });

  it("comes no further from the wish when a head is added", () => {
    fc.assert(
      fc.property(someWedges, wedgeWish, (heads, target) => {
        const band = (list: readonly MeasuredHead[]) => Math.floor((ours({ target, heads: list, wantedG: null })[0]?.score ?? 1e6) / 0.25 + 1e-9);
        expect(band(heads)).toBeLessThanOrEqual(band(heads.slice(1)));
      }),
      { numRuns: 50 },
    );
  });
});

describe(byLaw(chooseHeads, "a head is left as bending leaves it: loft and bounce by the same angle, lie by itself"), () => {
  it("leaves loft, lie and bounce as the gauge reads them after the bend", () => {
    fc.assert(
      fc.property(someWedges, wedgeWish, (heads, target) => {
        for (const { head, bend, attitude, bounceDeg } of ours({ target, heads, wantedG: null })) {
          const bare = { squaredLoftDeg: head.soledLoftDeg, seatedLieDeg: head.designLieDeg, bounceDeg: head.bounceDeg ?? degrees(0) };
          const after = afterBend(bare, bend ?? { loftChangeDeg: degrees(0), lieChangeDeg: degrees(0) });
          expect(attitude.squaredLoftDeg).toBeCloseTo(after.squaredLoftDeg, 9);
          expect(attitude.squaredLoftAtDesignLieDeg).toBeCloseTo(after.squaredLoftDeg, 9);
          expect(attitude.seatedLieDeg).toBeCloseTo(after.seatedLieDeg, 9);
          expect(attitude.soledFaceDeg).toBe(0);
          expect(bounceDeg).toEqual(head.bounceDeg === null ? null : expect.closeTo(after.bounceDeg, 9));
        }
      }),
      { numRuns: 50 },
    );
  });
});
