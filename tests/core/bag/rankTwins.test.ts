import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { comparedQuantities, defaultCheckTolerances } from "../../../core/bag/checkTolerances.ts";
import { defaultGaugeErrors } from "../../../core/bag/gaugeErrors.ts";
import { defaultPartCosts } from "../../../core/bag/partCosts.ts";
import { rankTwins } from "../../../core/bag/rankTwins.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import published from "../../../fixtures/published/gaugeError.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { someClub } from "../buildSheet/someParts.ts";

const gamer = someClub({});
const twin = (given: Partial<SpecClub>) => ({ club: someClub(given) });
const serials = (clubs: readonly { readonly club: SpecClub }[], of = gamer) => rankTwins(of, clubs).map((row) => row.twin.club.headSerial);
const scoreOf = (given: Partial<SpecClub>, of = gamer) => rankTwins(of, [twin(given)])[0]?.score;

describe(byTable(rankTwins, "gaugeError", published), () => {
  it.each(published.verdicts)("finds the loft of a twin $apartDeg° apart $verdict", ({ apartDeg, verdict }) => {
    const [only] = rankTwins(gamer, [twin({ squaredLoftDeg: 9.2 + apartDeg })]);
    expect(only?.comparison.rows.find(({ quantity }) => quantity === "squaredLoftDeg")?.verdict).toBe(verdict);
    expect(only?.score).toBeCloseTo((apartDeg / 0.25) ** 2, 6);
  });
});

const someTwins = fc
  .array(
    fc.record({
      squaredLoftDeg: fc.option(fc.double({ min: 7, max: 12, noNaN: true })),
      lengthMm: fc.option(fc.double({ min: 1130, max: 1160, noNaN: true })),
      swingWeightPoints: fc.double({ min: 0, max: 6, noNaN: true }),
      wraps: fc.integer({ min: 0, max: 4 }),
      shaftModel: fc.constantFrom("Dunlin 60 X", "Dunlin 70 X", null),
      gripModel: fc.constantFrom("Gorse Standard Round", "Heather Standard"),
      headModel: fc.constantFrom("Cairn", "Menhir"),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((list) => list.map((given, at) => twin({ ...given, headSerial: String(1000 + at) })));

/** The sum as it is written down, over the few things these twins may differ in. */
function summed(club: SpecClub): number {
  const loft = club.squaredLoftDeg === null ? 1 : ((club.squaredLoftDeg - 9.2) / 0.25) ** 2;
  const length = club.lengthMm === null ? 1 : ((club.lengthMm - 1149.35) / 1.5875) ** 2;
  const swing = ((club.swingWeightPoints ?? Number.NaN) - 3) / 0.5;
  const wraps = (club.wraps ?? Number.NaN) - 1;
  const parts =
    (club.shaftModel === "Dunlin 60 X" ? 0 : 36) + (club.gripModel === "Heather Standard" ? 4 : 0) + (club.headModel === "Menhir" ? 64 : 0);
  return loft + length + swing ** 2 + wraps ** 2 + parts;
}

describe(byLaw(rankTwins, "the sum of squares as written down, in whatever order the clubs come; the gamer itself is nearest"), () => {
  it("scores each twin by the sum, the lowest first", () => {
    fc.assert(
      fc.property(someTwins, (twins) => {
        const ranked = rankTwins(gamer, twins);
        expect(ranked).toHaveLength(twins.length);
        for (const row of ranked) expect(row.score).toBeCloseTo(summed(row.twin.club), 6);
        const scores = ranked.map(({ score }) => score);
        expect(scores).toEqual([...scores].sort((one, other) => one - other));
      }),
    );
  });

  it("does not depend on the order of the list", () => {
    fc.assert(
      fc.property(
        someTwins.chain((twins) => fc.tuple(fc.constant(twins), fc.shuffledSubarray([...twins, ...twins], { minLength: twins.length * 2 }))),
        ([twins, shuffled]) => {
          expect(serials(shuffled)).toEqual(serials([...twins, ...twins]));
        },
      ),
    );
  });

  it("puts the gamer itself first, at 0", () => {
    fc.assert(
      fc.property(someTwins, (twins) => {
        const [first] = rankTwins(gamer, [...twins, { club: gamer }]);
        expect(first?.score).toBe(0);
      }),
    );
  });

  it("lets no twin win by what is unknown of it", () => {
    fc.assert(
      fc.property(someTwins, fc.constantFrom(...comparedQuantities), ([given], quantity) => {
        const known = { ...(given?.club ?? gamer), [quantity]: gamer[quantity] };
        const [first] = rankTwins(gamer, [{ club: { ...known, [quantity]: null } }, { club: known }]);
        expect(first?.twin.club[quantity] ?? null).toBe(gamer[quantity] ?? null);
      }),
    );
  });

  it("is the same on both sides: more and less cost alike", () => {
    expect(scoreOf({ squaredLoftDeg: 9.45 })).toBeCloseTo(1, 9);
    expect(scoreOf({ squaredLoftDeg: 8.95 })).toBeCloseTo(1, 9);
  });
});

describe("rankTwins", () => {
  it("puts a shaft before a grip and a head before both", () => {
    const twins = [
      twin({ headSerial: "head", headModel: "Menhir" }),
      twin({ headSerial: "shaft", shaftModel: "Dunlin 70 X" }),
      twin({ headSerial: "grip", gripModel: "Heather Standard" }),
      twin({ headSerial: "logo", logo: "up" }),
    ];
    expect(serials(twins)).toEqual(["logo", "grip", "shaft", "head"]);
    expect(rankTwins(gamer, twins).map(({ score }) => score)).toEqual([1, 4, 36, 64]);
  });

  it.each([
    ["headModel", "Menhir", 64],
    ["grind", "wide", 36],
    ["shaftModel", "Curlew 120 X", 36],
    ["stampedLoftDeg", 10.5, 16],
    ["tipTrimMm", 25.4, 9],
    ["sleeveModel", "Other sleeve", 4],
    ["sleeveMark", "strong 1", 4],
    ["gripModel", "Heather Standard", 4],
    ["rib", true, 4],
    ["logo", "up", 1],
    ["stamp", "NH", 0.25],
  ] as const)("costs another %s what it says, and one that is unknown as much", (part, value, cost) => {
    const like = someClub({ grind: "full", stamp: "BO" });
    expect(scoreOf({ grind: "full", stamp: "BO", [part]: value }, like)).toBeCloseTo(cost, 9);
    expect(scoreOf({ grind: "full", stamp: "BO", [part]: null }, like)).toBeCloseTo(cost, 9);
    expect(rankTwins(like, [twin({ grind: "full", stamp: "BO", [part]: null })])[0]?.unknownCount).toBe(1);
  });

  it("costs nothing what only the twin has on record", () => {
    const [only] = rankTwins(gamer, [twin({ offsetMm: 2, stamp: "BO" })]);
    expect([only?.score, only?.unknownCount]).toEqual([0, 0]);
    expect(only?.comparison.unknown).toEqual(["offsetMm", "stamp"]);
  });

  it("counts a frequency of another set-up as unknown", () => {
    const of = (frequencySetUp: string) => someClub({ frequencyCpm: 258, frequencySetUp });
    const [same, other] = rankTwins(of("5 in clamp"), [{ club: of("2.5 in clamp") }, { club: of("5 in clamp") }]);
    expect([same?.score, same?.unknownCount, other?.score, other?.unknownCount]).toEqual([0, 0, 1, 1]);
  });

  it("puts the twin with less unknown first among equals, then the lower serial", () => {
    const halfKnown = twin({ headSerial: "0001", squaredLoftDeg: null });
    const oneOff = twin({ headSerial: "0009", squaredLoftDeg: 9.45 });
    const other = twin({ headSerial: "0005", squaredLoftDeg: 8.95 });
    expect(serials([halfKnown, oneOff, other])).toEqual(["0005", "0009", "0001"]);
  });

  it("counts a wrap as one, where there is no tolerance", () => {
    expect(scoreOf({ wraps: 3 })).toBe(4);
  });

  it.each([
    ["nothing", {}, []],
    ["a reading within its tolerance", { squaredLoftDeg: 9.4, lengthMm: 1150, swingWeightPoints: 3.5 }, []],
    ["a head", { headModel: "Menhir" }, ["head"]],
    ["a grind", { grind: "wide" }, ["head"]],
    ["a tip", { tipTrimMm: 0 }, ["shaft"]],
    ["a length", { lengthMm: 1152 }, ["length"]],
    ["a sleeve mark with its loft", { sleeveMark: "strong 1", squaredLoftDeg: 8.7 }, ["loft setting"]],
    ["a stamp", { stampedLoftDeg: 10.5 }, ["loft setting"]],
    ["a rib and a wrap", { rib: true, wraps: 2 }, ["grip"]],
    ["a swing weight", { swingWeightPoints: 2.4 }, ["swing weight"]],
    ["a total, which nobody calls a change", { totalMassG: 330 }, []],
    [
      "everything",
      { headModel: "Menhir", shaftModel: "Curlew", lengthMm: 1143, squaredLoftDeg: 8.5, gripModel: "Heather", swingWeightPoints: 5 },
      ["head", "shaft", "length", "loft setting", "grip", "swing weight"],
    ],
  ] as const)("names what changes with %s", (_what, given, changes) => {
    const [only] = rankTwins(someClub({ grind: "full" }), [twin({ grind: "full", ...given })]);
    expect(only?.changes).toEqual(changes);
  });

  it("hands back each twin as it came, with whatever else is known of it", () => {
    const given = { club: someClub({}), where: "drawer" };
    expect(rankTwins(gamer, [given])[0]?.twin).toBe(given);
  });

  it("tells two apart that differ in nothing but what else is known of them", () => {
    const two = [
      { club: gamer, where: "b" },
      { club: gamer, where: "a" },
    ];
    expect(rankTwins(gamer, two).map((row) => row.twin.where)).toEqual(["a", "b"]);
    expect(rankTwins(gamer, [...two].reverse()).map((row) => row.twin.where)).toEqual(["a", "b"]);
  });

  it("ranks nothing when nothing is finished, and leaves the list as it came", () => {
    expect(rankTwins(gamer, [])).toEqual([]);
    const list = [twin({ squaredLoftDeg: 12 }), twin({})];
    rankTwins(gamer, list);
    expect(list[0]?.club.squaredLoftDeg).toBe(12);
  });

  it("takes other costs, tolerances and errors at their word", () => {
    const costs = { ...defaultPartCosts, gripModel: 100 };
    const tolerances = { ...defaultCheckTolerances, squaredLoftDeg: { tolerance: 0.5, flag: null, concerns: "feel" as const } };
    const gaugeErrors = { ...defaultGaugeErrors, squaredLoftDeg: { error: 1, source: "a blunt gauge" } };
    expect(rankTwins(gamer, [twin({ gripModel: "Heather" })], { partCosts: costs })[0]?.score).toBe(100);
    const [only] = rankTwins(gamer, [twin({ squaredLoftDeg: 9.7 })], { tolerances, gaugeErrors });
    expect(only?.score).toBeCloseTo(1, 9);
    expect(only?.comparison.rows[0]?.verdict).toBe("same");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -0.001, 1_000_001])("refuses a part that costs %d", (cost) => {
    expect(() => rankTwins(gamer, [], { partCosts: { ...defaultPartCosts, headModel: cost } })).toThrow("headModel");
  });

  it("takes a part that costs nothing or a million", () => {
    for (const cost of [0, 1e6]) expect(scoreOf({})).toBe(rankTwins(gamer, [twin({})], { partCosts: { ...defaultPartCosts, logo: cost } })[0]?.score);
  });

  it("refuses a number no club has, of the gamer without a twin too", () => {
    expect(() => rankTwins(someClub({ lengthMm: Number.NaN }), [])).toThrow("quantity-out-of-range");
    expect(() => rankTwins(someClub({ lengthMm: 100 }), [])).toThrow("quantity-out-of-range");
    expect(() => rankTwins(gamer, [twin({ lengthMm: 2001 })])).toThrow("quantity-out-of-range");
    expect(() =>
      rankTwins(gamer, [], { tolerances: { ...defaultCheckTolerances, wraps: { ...defaultCheckTolerances.wraps, tolerance: -1 } } }),
    ).toThrow("wraps tolerance");
  });

  it("takes a thousand twins and refuses one more", () => {
    const many = Array.from({ length: 1001 }, () => twin({}));
    expect(rankTwins(gamer, many.slice(1))).toHaveLength(1000);
    expect(() => rankTwins(gamer, many)).toThrow("list-of-wrong-size");
  });
});
