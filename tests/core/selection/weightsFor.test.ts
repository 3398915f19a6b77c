import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { grams, millimetres, swingWeightPoints } from "../../../core/quantity/units.ts";
import type { StockedWeight, WeightAims, WeightPlan, WeightQuestion } from "../../../core/selection/weightQuestion.ts";
import { MOST_TIP_WEIGHT_G } from "../../../core/selection/weightQuestion.ts";
import { weightsFor } from "../../../core/selection/weightsFor.ts";
import { byLaw } from "../../support/checkOf.ts";
import { front, heel, rear, someScrew, tipFromCapMm, toe } from "./someWeights.ts";

type Question = WeightQuestion<StockedWeight>;

const GRAM_MM_PER_POINT = 1.75 * 28.349523125 * 25.4;
const swing = (wanted: number, tolerance = 0.5): WeightAims => ({
  swingWeightPoints: { wanted: swingWeightPoints(wanted), tolerance: swingWeightPoints(tolerance) },
});
const mass = (wanted: number, tolerance = 0.5): WeightAims => ({ headMassG: { wanted: grams(wanted), tolerance: grams(tolerance) } });
const toToe = (wanted: number, tolerance = 0.3): WeightAims => ({
  centreToeMm: { wanted: millimetres(wanted), tolerance: millimetres(tolerance) },
});
const toBack = (wanted: number, tolerance = 0.3): WeightAims => ({
  centreBackMm: { wanted: millimetres(wanted), tolerance: millimetres(tolerance) },
});

const some = (given: Partial<Question>): Question => ({
  head: { massG: grams(190), swingWeightPoints: swingWeightPoints(-4) },
  aims: {},
  ports: [front, rear],
  screws: [2, 4, 6, 8, 10].map((massG) => someScrew(massG)),
  ...given,
});

const screwsOf = (plan: WeightPlan<StockedWeight>) => plan.screws.map(({ port, weight }) => [port, weight.massG]);
const planOf = (question: Question) => weightsFor(question).plan;

/** Every piece by itself into every port by itself: no kinds, no symmetry. */
function assignments(pieces: readonly StockedWeight[], ports: Question["ports"]): readonly (readonly (StockedWeight | null)[])[] {
  const [port, ...rest] = ports;
  if (port === undefined) {
    return [[]];
  }
  return [null, ...pieces].flatMap((piece) =>
    assignments(
      pieces.filter((other) => other !== piece),
      rest,
    ).map((later) => [piece, ...later]),
  );
}

interface Tried {
  readonly reached: boolean;
  readonly order: readonly number[];
  readonly miss: number;
}

/** Every way without lead, straight from the definitions. */
function everyWay({ head, aims, ports, screws, melt, tip }: Question): readonly Tried[] {
  const pieces = screws.flatMap((row) => Array.from({ length: row.free }, () => ({ ...row })));
  const doses = melt === undefined ? [] : melt.places.flatMap((place) => [1, 2, 3].map((n) => ({ place, massG: n * melt.stepG })));
  const slugs = tip === undefined ? [] : tip.stock.filter(({ free, massG }) => free > 0 && massG <= tip.mostG);
  return assignments(pieces, ports).flatMap((taken) =>
    [null, ...doses].flatMap((dose) =>
      [null, ...slugs].map((slug) => {
        const put = [
          ...taken.flatMap((weight, at) => (weight === null ? [] : [{ place: ports[at] ?? front, massG: weight.massG as number }])),
          ...(dose === null ? [] : [dose]),
        ];
        const sum = (of: (part: (typeof put)[number]) => number) => put.reduce((total, part) => total + of(part), 0);
        const headMassG = head.massG + sum(({ massG }) => massG);
        const slugGramMm = slug === null || tip === undefined ? 0 : slug.massG * (tip.fromCapMm - 355.6);
        const got = {
          headMassG,
          swingWeightPoints:
            (head.swingWeightPoints ?? 0) + (sum(({ place, massG }) => massG * (place.fromCapMm - 355.6)) + slugGramMm) / GRAM_MM_PER_POINT,
          centreBackMm: sum(({ place, massG }) => massG * place.backMm) / headMassG,
          centreToeMm: sum(({ place, massG }) => massG * place.toeMm) / headMassG,
        };
        const off = Object.entries(aims).map(([quantity, aim]) => (got[quantity as keyof typeof got] - aim.wanted) / aim.tolerance);
        return {
          reached: off.every((share) => Math.abs(share) <= 1 + 1e-9),
          order: [slug?.massG ?? 0, dose?.massG ?? 0, put.length + (slug === null ? 0 : 1)],
          miss: off.reduce((total, share) => total + share ** 2, 0),
        };
      }),
    ),
  );
}

const inOrder = (one: Tried, other: Tried) =>
  one.order.map((value, at) => value - (other.order[at] ?? 0)).find((difference) => Math.abs(difference) > 1e-9) ?? one.miss - other.miss;

const missOf = (plan: WeightPlan<StockedWeight>) =>
  plan.deviations.reduce((total, { wanted, got, tolerance }) => total + ((got - wanted) / tolerance) ** 2, 0);

const someAims = fc
  .tuple(
    fc.option(fc.double({ min: -6, max: 16, noNaN: true }).map((points) => swing(points))),
    fc.option(fc.double({ min: 188, max: 220, noNaN: true }).map((massG) => mass(massG, 1))),
    fc.option(fc.double({ min: -2, max: 3, noNaN: true }).map((mm) => toBack(mm))),
    fc.option(fc.double({ min: -2, max: 3, noNaN: true }).map((mm) => toToe(mm))),
  )
  .map((aims): WeightAims => Object.assign({}, ...aims));

const someStock = fc.array(
  fc
    .tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 2 }), fc.boolean())
    .map(([massG, free, bin]) => someScrew(massG, { free, inPlayersBin: bin, place: bin ? "Bin" : "Rack 1" })),
  { maxLength: 4 },
);
const somePorts = fc.constantFrom([front, rear], [heel, toe, rear], [rear, { ...rear, name: "twin" }, front]);
const someMelt = fc.option(fc.constant({ places: [heel, toe], stepG: grams(1), mostG: grams(3) }));
const someTip = fc.option(
  fc.constant({ fromCapMm: tipFromCapMm, stock: [4, 6, 9].map((massG) => someScrew(massG)), mostG: grams(MOST_TIP_WEIGHT_G) }),
);

const someQuestion = fc
  .tuple(someAims, someStock, somePorts, someMelt, someTip)
  .map(
    ([aims, screws, ports, melt, tip]): Question =>
      some({ aims, screws, ports, ...(melt === null ? {} : { melt }), ...(tip === null ? {} : { tip }) }),
  );

describe(byLaw(weightsFor, "trying every piece in every port finds nothing better"), () => {
  it("reaches when any way reaches, by the least of tip weight, of melt and of parts; else comes as near as any", () => {
    fc.assert(
      fc.property(someQuestion, (question) => {
        const answer = weightsFor(question);
        const every = everyWay(question);
        const reaching = every.filter(({ reached }) => reached).sort(inOrder);
        expect(answer.kind).toBe(reaching.length > 0 ? "reached" : "nearest");
        const { plan } = answer;
        const best = reaching[0];
        if (best === undefined) {
          expect(missOf(plan)).toBeCloseTo(Math.min(...every.map(({ miss }) => miss)), 5);
        } else {
          const parts = plan.screws.length + (plan.melt === null ? 0 : 1) + (plan.tip === null ? 0 : 1);
          expect([plan.tip?.massG ?? 0, plan.melt?.massG ?? 0, parts]).toEqual(best.order);
          expect(missOf(plan)).toBeCloseTo(best.miss, 5);
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe(byLaw(weightsFor, "lead on a fine grid reaches nothing that it does not"), () => {
  it("reaches whenever any tenth of a gram in one place does, with two wishes at once", () => {
    fc.assert(
      fc.property(fc.double({ min: -4, max: 8, noNaN: true }), fc.double({ min: -1, max: 2, noNaN: true }), (points, toeMm) => {
        const aims = { ...swing(points), ...toToe(toeMm) };
        const answer = weightsFor(some({ aims, ports: [], screws: [], lead: { places: [toe, rear], mostG: grams(12) } }));
        const grid = [toe, rear].flatMap((place) => Array.from({ length: 121 }, (_, step) => ({ place, massG: step / 10 })));
        const reaches = grid.some(
          ({ place, massG }) =>
            Math.abs(-4 + (massG * (place.fromCapMm - 355.6)) / GRAM_MM_PER_POINT - points) <= 0.5 &&
            Math.abs((massG * place.toeMm) / (190 + massG) - toeMm) <= 0.3,
        );
        expect(answer.kind === "reached" || !reaches).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

describe(byLaw(weightsFor, "the order of the stock changes nothing, and one more weight never makes it worse"), () => {
  it("gives the same plan for a shuffled stock", () => {
    fc.assert(
      fc.property(
        someQuestion.chain((question) =>
          fc.tuple(fc.constant(question), fc.shuffledSubarray([...question.screws], { minLength: question.screws.length })),
        ),
        ([question, screws]) => {
          const [one, other] = [planOf(question), planOf({ ...question, screws })];
          expect(screwsOf(other)).toEqual(screwsOf(one));
          expect({ ...other, screws: [] }).toEqual({ ...one, screws: [] });
        },
      ),
      { numRuns: 100 },
    );
  });

  it("stays reached with one more screw, or comes at least as near", () => {
    fc.assert(
      fc.property(someQuestion, fc.integer({ min: 1, max: 12 }), (question, massG) => {
        const before = weightsFor(question);
        const after = weightsFor({ ...question, screws: [...question.screws, someScrew(massG, { name: "One more" })] });
        if (before.kind === "reached") {
          expect(after.kind).toBe("reached");
        } else if (after.kind === "nearest") {
          expect(missOf(after.plan)).toBeLessThanOrEqual(missOf(before.plan) + 1e-5);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe("weightsFor", () => {
  it("leaves a head alone that is as wished", () => {
    const answer = weightsFor(some({ aims: { ...swing(-4), ...mass(190) } }));
    expect(answer.kind).toBe("reached");
    expect(answer.plan).toMatchObject({ screws: [], melt: null, tip: null, lead: null, headMassG: 190, swingWeightPoints: -4, centreBackMm: 0 });
  });

  it("uses screws before melt, melt before the tip weight, and lead last", () => {
    const means = {
      melt: { places: [toe], stepG: grams(0.5), mostG: grams(6) },
      tip: { fromCapMm: tipFromCapMm, stock: [4, 6, 8].map((massG) => someScrew(massG)), mostG: grams(MOST_TIP_WEIGHT_G) },
      lead: { places: [rear], mostG: grams(10) },
    };
    const used = (points: number) => {
      const { screws, melt, tip, lead } = planOf(some({ aims: swing(points), screws: [someScrew(4), someScrew(6)], ...means }));
      return [screws.length, melt !== null, tip !== null, lead !== null];
    };
    expect(used(2)).toEqual([2, false, false, false]);
    expect(used(5)).toEqual([2, true, false, false]);
    expect(used(9)).toEqual([2, true, true, false]);
    expect(used(14)).toEqual([2, true, true, true]);
  });

  it("takes lead to the very target when it takes lead at all", () => {
    const plan = planOf(some({ aims: swing(0), ports: [], lead: { places: [toe], mostG: grams(20) } }));
    expect(plan.swingWeightPoints).toBeCloseTo(0, 9);
    expect(plan.lead).toMatchObject({ place: "toe" });
    expect(plan.lead?.massG).toBeCloseTo((4 * GRAM_MM_PER_POINT) / (1137 - 355.6), 9);
  });

  it("takes lead to the edge of a tolerance where only that meets two wishes", () => {
    const lead = { places: [toe], mostG: grams(20) };
    const aims = { ...mass(195, 0.5), ...toToe((7 * 45) / 197, 0.4) };
    const answer = weightsFor(some({ aims, ports: [], lead }));
    expect(answer.kind).toBe("reached");
    expect(answer.plan.headMassG).toBeGreaterThan(195.1);
    expect(answer.plan.headMassG).toBeLessThanOrEqual(195.5 + 1e-9);
  });

  it("says what it misses and by how much when nothing reaches", () => {
    const answer = weightsFor(some({ aims: { ...swing(-7), ...mass(190) } }));
    expect(answer.plan.screws).toEqual([]);
    expect(answer).toMatchObject({ kind: "nearest", misses: [{ quantity: "swingWeightPoints", wanted: -7, got: -4, tolerance: 0.5 }] });
  });

  it("counts a miss from just past the tolerance on, and calls it reached at the tolerance itself", () => {
    expect(weightsFor(some({ aims: mass(190.5), screws: [] })).kind).toBe("reached");
    expect(weightsFor(some({ aims: mass(190.51), screws: [] })).kind).toBe("nearest");
    expect(weightsFor(some({ aims: mass(190, 0), screws: [] })).kind).toBe("reached");
  });

  it("puts all the lead there may be when that is still too little", () => {
    const answer = weightsFor(some({ aims: swing(10), ports: [], lead: { places: [toe], mostG: grams(3) } }));
    expect([answer.kind, answer.plan.lead?.massG]).toEqual(["nearest", 3]);
  });

  it("does not count the tip weight to the head", () => {
    const tip = { fromCapMm: tipFromCapMm, stock: [someScrew(8)], mostG: grams(MOST_TIP_WEIGHT_G) };
    const plan = planOf(some({ aims: swing(0.5), ports: [], tip }));
    expect([plan.tip?.massG, plan.headMassG]).toEqual([8, 190]);
    expect(plan.swingWeightPoints).toBeCloseTo(-4 + (8 * 28.5) / 49.6116654, 6);
  });

  it("takes a tip weight of 8 g and none that is heavier", () => {
    const aims = swing(4);
    const tip = (massG: number) => ({ fromCapMm: tipFromCapMm, stock: [someScrew(massG)], mostG: grams(MOST_TIP_WEIGHT_G) });
    expect(planOf(some({ aims, ports: [], tip: tip(8) })).tip?.massG).toBe(8);
    expect(planOf(some({ aims, ports: [], tip: tip(8.1) })).tip).toBe(null);
  });

  it("respects the stock, and takes the one in the player's bin first", () => {
    const screws = [someScrew(4, { free: 1 }), someScrew(4, { place: "Bin", inPlayersBin: true, free: 1 }), someScrew(9, { free: 0 })];
    const one = planOf(some({ aims: mass(194), screws }));
    expect(one.screws.map(({ weight }) => weight.place)).toEqual(["Bin"]);
    const two = planOf(some({ aims: mass(199), screws }));
    expect(two.screws.map(({ weight }) => weight.place).sort()).toEqual(["Bin", "Rack 1"]);
  });

  it("takes the pair out of the player's bin when two pairs weigh the same", () => {
    const bin = { place: "Bin", inPlayersBin: true };
    const screws = [someScrew(3), someScrew(7), someScrew(4, bin), someScrew(6, bin)];
    expect(planOf(some({ aims: mass(200), screws })).screws.map(({ weight }) => weight.place)).toEqual(["Bin", "Bin"]);
  });

  it("moves the centre to the toe and the back by the side the weight goes to", () => {
    const ports = [heel, toe];
    expect(screwsOf(planOf(some({ aims: { ...mass(200), ...toToe(2.25) }, ports })))).toEqual([["toe", 10]]);
    expect(screwsOf(planOf(some({ aims: { ...mass(200), ...toToe(-1.75) }, ports })))).toEqual([["heel", 10]]);
    expect(screwsOf(planOf(some({ aims: { ...mass(200), ...toBack(2.75) } })))).toEqual([["rear", 10]]);
    expect(screwsOf(planOf(some({ aims: { ...mass(200), ...toBack(-1) } })))).toEqual([["front", 10]]);
  });

  it("does not need to know the swing weight where none is wished, and refuses a wish for one without it", () => {
    const head = { massG: grams(190) };
    expect(planOf(some({ head, aims: mass(200) })).swingWeightPoints).toBe(null);
    expect(() => weightsFor(some({ head, aims: swing(2) }))).toThrow("headSwingWeightPoints");
  });

  it("tries twelve different screws in four ports", () => {
    const screws = Array.from({ length: 12 }, (_, at) => someScrew(at + 1));
    /** 3 g in front, 11 g in the rear, 5 g in the heel, 12 g in the toe. */
    const aims = { ...mass(221, 0.1), ...toToe((44 - 175 + 540) / 221, 0.01), ...toBack((-60 + 605 + 50 + 120) / 221, 0.01) };
    const answer = weightsFor(some({ aims, screws, ports: [front, rear, heel, toe] }));
    expect(answer.kind).toBe("reached");
    expect(new Set(answer.plan.screws.map(({ weight }) => weight.name)).size).toBe(answer.plan.screws.length);
  });

  it("refuses five ports, and more masses than four ports can be tried with", () => {
    expect(() => weightsFor(some({ ports: [front, rear, heel, toe, front] }))).toThrow("list-of-wrong-size");
    const screws = (count: number) => Array.from({ length: count }, (_, at) => someScrew(at + 1));
    expect(() => weightsFor(some({ ports: [front, rear, heel, toe], screws: screws(17) }))).toThrow("screwMasses");
    expect(weightsFor(some({ ports: [rear, rear], screws: screws(40) })).kind).toBe("reached");
  });

  it("refuses more ways than half a million: twelve screws, four ports, a tip weight and twenty doses of melt", () => {
    const screws = Array.from({ length: 12 }, (_, at) => someScrew(at + 1));
    const tip = { fromCapMm: tipFromCapMm, stock: [someScrew(4)], mostG: grams(8) };
    const melt = { places: [toe], stepG: grams(0.5), mostG: grams(10) };
    const given = { ports: [front, rear, heel, toe], screws, aims: mass(190), tip };
    expect(weightsFor(some(given)).kind).toBe("reached");
    expect(() => weightsFor(some({ ...given, melt }))).toThrow("waysToTry");
  });

  it.each([0, 7])("refuses %d places for lead or melt", (count) => {
    const places = Array.from({ length: count }, () => toe);
    expect(() => weightsFor(some({ lead: { places, mostG: grams(5) } }))).toThrow("leadPlaces");
    expect(() => weightsFor(some({ melt: { places, stepG: grams(1), mostG: grams(5) } }))).toThrow("meltPlaces");
  });

  it("refuses more than twenty steps of melt, and half a screw", () => {
    const melt = (stepG: number) => ({ places: [toe], stepG: grams(stepG), mostG: grams(10) });
    expect(weightsFor(some({ melt: melt(0.5) })).kind).toBe("reached");
    expect(() => weightsFor(some({ melt: melt(0.49) }))).toThrow("meltStepG");
    expect(() => weightsFor(some({ screws: [someScrew(2, { free: 1.5 })] }))).toThrow("free");
  });
});

/** The same value with one number replaced, for every number in it. */
function spoilt(value: unknown, by: number): readonly unknown[] {
  if (typeof value === "number") {
    return [by];
  }
  if (typeof value !== "object" || value === null) {
    return [];
  }
  return Object.entries(value).flatMap(([key, inner]) =>
    spoilt(inner, by).map((spoiltInner) => (Array.isArray(value) ? value.with(Number(key), spoiltInner) : { ...value, [key]: spoiltInner })),
  );
}

describe("weightsFor, number by number", () => {
  const whole = some({
    aims: { ...swing(2), ...mass(200), ...toToe(1), ...toBack(1) },
    melt: { places: [toe], stepG: grams(1), mostG: grams(4) },
    tip: { fromCapMm: tipFromCapMm, stock: [someScrew(4)], mostG: grams(8) },
    lead: { places: [rear], mostG: grams(10) },
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("refuses %d in the place of any number", (by) => {
    const questions = spoilt(whole, by) as readonly Question[];
    expect(questions.length).toBeGreaterThan(30);
    for (const question of questions) {
      expect(() => weightsFor(question)).toThrow("quantity-out-of-range");
    }
  });
});
