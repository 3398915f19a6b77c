import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nearestHeads } from "../../../../bot/flows/match/nearestHeads.ts";
import type { MeasuredHead } from "../../../../core/buildSheet/parts.ts";
import { attitudeOf } from "../../../../core/head/attitudeOf.ts";
import { someClub, someHead, someHeadModel, someSleeve, someWeight, stocked } from "../../../core/buildSheet/someParts.ts";

const gamer = someClub({ squaredLoftDeg: 9.2, soledFaceDeg: 0.4, seatedLieDeg: 57, headMassG: 200 });
const sleeve = someSleeve({});
/** Two ports in a driver: with two of 2 g and one of 4 g these can be added. */
const weights = [stocked(someWeight(2)), stocked(someWeight(4), { free: 1 })];
const SUMS = [0, 2, 4, 6];
const near = (heads: readonly MeasuredHead[], of = gamer, hand: "left" | "right" = "right") =>
  nearestHeads(of, hand, { heads, sleeves: [sleeve], weights });
const serials = (...given: Parameters<typeof near>) => near(...given).map(({ choice }) => choice.head.serial);

const someHeads = fc
  .array(
    fc.record({
      soledLoftDeg: fc.double({ min: 7, max: 12, noNaN: true }),
      soledFaceDeg: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
      designLieDeg: fc.double({ min: 56, max: 60, noNaN: true }),
      massG: fc.double({ min: 192, max: 205, noNaN: true }),
      here: fc.boolean(),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((list) => list.map((given, at) => someHead({ ...given, serial: String(1000 + at), place: given.here ? "D-1" : "home base" })));

/** The lowest sum of squares of a head over every mark: in 0.25° of loft, 0.5° of face and lie, 2 g. */
function lowest(head: MeasuredHead): number {
  const heavyEnough = SUMS.map((added) => head.massG + added).filter((massG) => massG === head.massG || massG <= 202);
  const massOff = Math.min(...heavyEnough.map((massG) => Math.abs(massG - 200)));
  const scores = sleeve.marks.map(({ clockDeg }) => {
    const got = attitudeOf(head, { tiltDeg: sleeve.tiltDeg, clockDeg });
    return (
      ((got.squaredLoftDeg - 9.2) / 0.25) ** 2 + ((got.soledFaceDeg - 0.4) / 0.5) ** 2 + ((got.seatedLieDeg - 57) / 0.5) ** 2 + (massOff / 2) ** 2
    );
  });
  return Math.min(...scores);
}

/** Scores within a quarter of each other are equally good: a trained gauge cannot tell them apart. */
const BAND = 0.25;

describe("nearestHeads", () => {
  it("finds what a plain loop over heads, marks and screws finds", () => {
    fc.assert(
      fc.property(someHeads, (heads) => {
        const found = near(heads);
        expect(found).toHaveLength(Math.min(5, heads.length));
        const shown = new Set(found.map(({ choice }) => choice.head.serial));
        const looped = heads.map((head) => ({ head, score: lowest(head) })).sort((one, other) => one.score - other.score);
        const [best] = looped;
        const left = looped.filter(({ head }) => !shown.has(head.serial));
        expect(Math.min(...found.map(({ choice }) => choice.score))).toBeLessThan((best?.score ?? Number.NaN) + BAND);
        /** Only the nearest of this truck may push out one that is nearer. */
        const nearestHere = looped.find(({ head }) => head.here);
        const others = found.filter(({ choice }) => choice.head.serial !== nearestHere?.head.serial && !nearestOf(found, choice.head.serial));
        for (const { choice } of others) for (const { score } of left) expect(choice.score).toBeLessThan(score + BAND);
      }),
    );
  });

  it("shows the heads of this truck first, each once, and the nearest of them always", () => {
    fc.assert(
      fc.property(someHeads, (heads) => {
        const found = near(heads);
        const here = found.map(({ choice }) => choice.head.here);
        expect(here).toEqual([...here].sort((one, other) => Number(other) - Number(one)));
        expect(new Set(serials(heads)).size).toBe(found.length);
        expect(here.includes(true)).toBe(heads.some((head) => head.here));
      }),
    );
  });

  it("does not depend on the order of the stock", () => {
    fc.assert(
      fc.property(
        someHeads.chain((heads) => fc.tuple(fc.constant(heads), fc.shuffledSubarray(heads, { minLength: heads.length }))),
        ([heads, shuffled]) => {
          expect(serials(shuffled)).toEqual(serials(heads));
        },
      ),
    );
  });

  it("keeps to the player's hand", () => {
    const heads = [someHead({ serial: "1", hand: "left" }), someHead({ serial: "2", hand: "right" })];
    expect([serials(heads, gamer, "left"), serials(heads, gamer, "right")]).toEqual([["1"], ["2"]]);
  });

  it("takes the gamer's model, and another only when there is none of it", () => {
    const other = someHead({ serial: "1", soledLoftDeg: 9.2, model: someHeadModel({ name: "Menhir" }) });
    const same = someHead({ serial: "2", soledLoftDeg: 11 });
    expect(serials([other, same])).toEqual(["2"]);
    expect(serials([other])).toEqual(["1"]);
    expect(serials([other, same], someClub({ outside: true, headModel: null }))).toContain("1");
  });

  it("takes the gamer's grind, and another of its model only when there is none", () => {
    const wedge = (serial: string, name: string, grind: string) =>
      someHead({
        serial,
        model: someHeadModel({ name, family: "wedge", sleeveFamily: null, grind }),
        soledLoftDeg: 56,
        bounceDeg: 12,
        designLieDeg: 64,
      });
    const of = someClub({
      club: "sw" as typeof gamer.club,
      headModel: "Tarn",
      stampedLoftDeg: null,
      grind: "wide",
      squaredLoftDeg: 56,
      seatedLieDeg: 64,
      bounceDeg: 14,
    });
    expect(serials([wedge("1", "Tarn", "full"), wedge("2", "Tarn", "wide")], of)).toEqual(["2"]);
    const [only] = near([wedge("1", "Tarn", "full"), wedge("3", "Other", "wide")], of);
    expect([only?.choice.head.serial, only?.choice.mark]).toEqual(["1", null]);
    expect(only?.rows.find(({ quantity }) => quantity === "bounceDeg")).toMatchObject({ delta: -2, verdict: "off" });
  });

  it("takes no iron of another stamp, and a wedge of one only when there is none", () => {
    const bonded = (serial: string, family: "iron" | "wedge", stampedLoftDeg: number, name: string) =>
      someHead({
        serial,
        stampedLoftDeg,
        soledLoftDeg: stampedLoftDeg,
        designLieDeg: 62,
        model: someHeadModel({ name, family, sleeveFamily: null }),
      });
    const iron = someClub({ club: "7i" as typeof gamer.club, headModel: "Scree", stampedLoftDeg: 35, squaredLoftDeg: 35, seatedLieDeg: 62 });
    expect(serials([bonded("1", "iron", 35, "Scree"), bonded("2", "iron", 36, "Scree")], iron)).toEqual(["1"]);
    expect(serials([bonded("2", "iron", 36, "Scree")], iron)).toEqual([]);
    expect(serials([bonded("3", "iron", 35, "Other")], iron)).toEqual(["3"]);
    expect(serials([bonded("2", "iron", 36, "Other")], { ...iron, outside: true, headModel: null, stampedLoftDeg: null })).toEqual(["2"]);
    const wedge = { ...iron, club: "sw" as typeof gamer.club, headModel: "Tarn", stampedLoftDeg: 56, squaredLoftDeg: 56 };
    expect(serials([bonded("1", "wedge", 56, "Tarn"), bonded("2", "wedge", 54, "Tarn")], wedge)).toEqual(["1"]);
    expect(serials([bonded("2", "wedge", 54, "Tarn")], wedge)).toEqual(["2"]);
  });

  it("bends a bonded head towards the gamer, and says by how much", () => {
    const model = someHeadModel({ name: "Scree", family: "iron", sleeveFamily: null });
    const [only] = near(
      [someHead({ model, stampedLoftDeg: 35, soledLoftDeg: 34, designLieDeg: 62 })],
      someClub({ club: "7i" as typeof gamer.club, headModel: "Scree", stampedLoftDeg: 35, squaredLoftDeg: 35, soledFaceDeg: null, seatedLieDeg: 62 }),
    );
    expect(only?.choice.bend?.loftChangeDeg).toBeCloseTo(1, 6);
    expect(only?.rows.find(({ quantity }) => quantity === "squaredLoftDeg")).toMatchObject({ verdict: "same" });
  });

  it("screws on what brings the head nearest, and says what is left", () => {
    const [only] = near([someHead({ massG: 195.5 })]);
    expect(only?.addedG).toBe(4);
    expect(only?.rows.find(({ quantity }) => quantity === "headMassG")).toMatchObject({ wanted: 200, got: 199.5, verdict: "close" });
  });

  it("adds nothing and compares no mass where the gamer's is not on record", () => {
    const [only] = near([someHead({})], someClub({ headMassG: null }));
    expect(only?.addedG).toBeNull();
    expect(only?.rows.map(({ quantity }) => quantity)).toEqual(["squaredLoftDeg", "soledFaceDeg", "seatedLieDeg"]);
  });

  it("names none for a gamer without an angle on record, and none where none are", () => {
    expect(near([someHead({})], someClub({ squaredLoftDeg: null, soledFaceDeg: null, seatedLieDeg: null }))).toEqual([]);
    expect(near([])).toEqual([]);
  });
});

/** The first shown of this truck: whatever its score, it is there. */
function nearestOf(found: ReturnType<typeof near>, serial: string): boolean {
  return found[0]?.choice.head.here === true && found[0].choice.head.serial === serial;
}
