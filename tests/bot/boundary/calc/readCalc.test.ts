import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Fields } from "../../../../bot/boundary/calc/fields.ts";
import { readCalc } from "../../../../bot/boundary/calc/readCalc.ts";
import { players } from "../testContext.ts";

const fields = {
  head: { kind: "part", also: ["hd"] },
  loft: { kind: "number", measure: "angle", min: 0, max: 70 },
  length: { kind: "number", measure: "length", min: -80, max: 1500, also: ["playing length"] },
  swing: { kind: "number", measure: "swing", min: -30, max: 40, bare: true, also: ["swing weight"] },
  points: { kind: "number", measure: "points", min: -30, max: 30, bare: true },
  inertia: { kind: "number", measure: "inertia", min: 1000, max: 5000 },
  layers: { kind: "number", measure: "count", min: 0, max: 20 },
  lofts: { kind: "numbers", measure: "angle", min: 0, max: 70 },
  hand: { kind: "word", words: ["left", "right"] },
  mark: { kind: "text" },
  period: { kind: "number", measure: "time", min: 0.1, max: 10 },
  carry: { kind: "number", measure: "distance", min: 1, max: 400 },
  ei: { kind: "number", measure: "stiffness", min: 1, max: 300 },
} as const satisfies Fields;

const read = (text: string) => readCalc(text, fields, { players, otherParts: true });

/** What was read in short: values in mm, g, °, points, kg·cm², s, m; parts as `name mass@place`. */
function meaning(text: string) {
  const { values, parts, faults, club } = read(text);
  const short = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(short);
    return typeof value === "object" && value !== null && "value" in value ? Math.round(Number(value.value) * 1e6) / 1e6 : value;
  };
  return {
    ...Object.fromEntries(Object.entries(values).map(([name, value]) => [name, short(value)])),
    ...(parts.length === 0 ? {} : { parts: parts.map(({ name, mass, place }) => `${name} ${short(mass)}@${short(place)}`) }),
    ...(club === null ? {} : { club: club.kind === "order" ? club.number : `${club.player.name} ${club.club} ${club.from}` }),
    ...(faults.length === 0
      ? {}
      : { faults: faults.map(({ word, accepted, guess }) => `${word} | ${accepted.kind}${guess === null ? "" : ` | ${guess}`}`) }),
  };
}

describe("readCalc: meanings by common practice, no source", () => {
  it.each([
    ["loft 9.5", { loft: 9.5 }],
    ["2 points for me on tolls 7i", { points: 2, club: "Marrick Toll 7i gamer" }],
    ["2 points, toll 7i", { points: 2, club: "Marrick Toll 7i gamer" }],
    ["loft +2", { faults: ["+2° | value"] }],
    ["lofts 46,50,54", { lofts: [46, 50, 54] }],
    ["loft=9.5°", { loft: 9.5 }],
    ["loft: 9,5 deg", { loft: 9.5 }],
    ["loft is 9 1/2", { loft: 9.5 }],
    ["length 45 1/4", { length: 1149.35 }],
    ['length 45.25"', { length: 1149.35 }],
    ["length 1149 mm", { length: 1149 }],
    ["length 1149", { length: 1149 }],
    ["length 114.9cm", { length: 1149 }],
    ["playing length 45", { length: 1143 }],
    ["length 1/2 shorter", { length: -12.7 }],
    ["length 1/2 in longer", { length: 12.7 }],
    ["length -1/2", { length: -12.7 }],
    ["swing d3", { swing: 3 }],
    ["swing weight C 9.5", { swing: -0.5 }],
    ["d3.5", { swing: 3.5 }],
    ["+2 points", { points: 2 }],
    ["two more points, how much weight?", { points: 2 }],
    ["half a point lighter", { points: -0.5 }],
    ["inertia 2750 kg·cm²", { inertia: 2750 }],
    ["inertia 2750 kgcm2", { inertia: 2750 }],
    ["inertia 2750kg cm2", { inertia: 2750 }],
    ["layers 2", { layers: 2 }],
    ["layers 2 wraps", { layers: 2 }],
    ["lofts 46 50 54 58", { lofts: [46, 50, 54, 58] }],
    ["lofts 46 50, loft 9", { lofts: [46, 50], loft: 9 }],
    ["hand left mark strong 1, loft 9", { hand: "left", mark: "strong 1", loft: 9 }],
    ["mark upright loft 9", { mark: "upright", loft: 9 }],
    ["period 1.87 s", { period: 1.87 }],
    ["period 1870ms", { period: 1.87 }],
    ["carry 100 yd", { carry: 91.44 }],
    ["carry 100", { carry: 91.44 }],
    ["carry 100m", { carry: 100 }],
    ["ei 50 Nm²", { ei: 50 }],
    ["head 200 at 44.5", { parts: ["head 200@1130.3"] }],
    ["hd 200g@44.5in loft 9", { parts: ["head 200@1130.3"], loft: 9 }],
    ["head 7 oz at 1130 mm", { parts: ["head 198.446662@1130"] }],
    ["hot melt 4 at 44, head 200 at 44.5", { parts: ["hot melt 4@1117.6", "head 200@1130.3"] }],
    ["oxtoby driver, loft 9", { club: "Bram Oxtoby driver gamer", loft: 9 }],
    ["bram's 7 iron backup loft 9", { club: "Bram Oxtoby 7i backup", loft: 9 }],
    ["loft 9 on toll gamer sw", { club: "Marrick Toll sw gamer", loft: 9 }],
    ["order 57 loft 9", { club: 57, loft: 9 }],
  ])("reads %s", (text, wanted) => expect(meaning(text)).toEqual(wanted));

  it.each([
    ["loft", { faults: ["loft | range"] }],
    ["loft,9", { points: 9, faults: ["loft | range"] }],
    ["loft 95", { faults: ["95° | range | 9.5"] }],
    ["loft 9 mm", { faults: ["9 mm | units"] }],
    ["loft 9, loft 10", { loft: 9, faults: ["10 | once"] }],
    ["layers 2 in", { faults: ["2 in | units"] }],
    ["hand lefd", { faults: ["lefd | words | left"] }],
    ["swing d14", { faults: ["d14 | swing"] }],
    ["lotf 9 hand right", { hand: "right", faults: ["lotf 9 | names | loft"] }],
    ["head 200", { faults: ["head 200 | part"] }],
    ["head 2000 at 44.5", { faults: ["2000 g | range | 200"] }],
    ["pruett driver", { faults: ["pruett | words"] }],
    ["oxtoby", { faults: ["oxtoby | words"] }],
  ])("says what is wrong in %s", (text, wanted) => expect(meaning(text)).toEqual(wanted));
});

describe("readCalc", () => {
  it("says every input as it was written, with its unit", () => {
    expect(read("head 7.05oz at 45 1/4, loft 9,5 half a point less").understood).toEqual([
      {
        name: "head",
        values: [expect.objectContaining({ written: "7.05", unit: "oz" }), expect.objectContaining({ written: "45 1/4", unit: "in" })],
        between: "at",
        assumed: false,
      },
      { name: "loft", values: [expect.objectContaining({ written: "9.5", unit: "°" })], between: ",", assumed: false },
      { name: "points", values: [expect.objectContaining({ written: "-0.5", unit: "points" })], between: ",", assumed: false },
    ]);
  });

  it("names no player when the view takes none", () => {
    expect(readCalc("oxtoby driver", fields).club).toBeNull();
  });

  const clauses = ["loft 9.25", "length 45 1/4", "swing d3", "hand left", "head 200 at 44.5", "inertia 2750", "layers 2"];

  it("means the same whatever parts the clauses and in whatever order they stand", () => {
    const valuesOf = (text: string) => ({ ...meaning(text) });
    const whole = valuesOf(clauses.join(", "));
    const separators = fc.array(fc.constantFrom(" ", ", ", "\n", "; ", "\r\n"), { minLength: clauses.length, maxLength: clauses.length });
    fc.assert(
      fc.property(fc.shuffledSubarray(clauses, { minLength: clauses.length }), separators, (shuffled, between) => {
        expect(valuesOf(shuffled.map((clause, index) => clause + (between[index] ?? " ")).join(""))).toEqual(whole);
      }),
    );
  });

  it("throws on no text at all and keeps every value within its range", () => {
    const words = fc.constantFrom(
      ...'head loft hand left at @ 45 1/4 9,25 - + / " ° ½ , ; \n oxtoby driver on order 57 d3 oz mm kg cm2 points more shorter __proto__ NaN Infinity 1e9'.split(
        " ",
      ),
    );
    const typed = fc.array(words, { maxLength: 60 }).map((some) => some.join(" "));
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 300 }), typed), (text) => {
        const { values, parts } = read(text);
        for (const number of [values.loft, values.length, values.points, ...parts.flatMap(({ mass, place }) => [mass, place])]) {
          expect(number == null || Number.isFinite(number.value)).toBe(true);
        }
        expect(values.loft === undefined || (values.loft.value >= 0 && values.loft.value <= 70)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it.each(["a ", "head ", "head 200 at ", "1/", "on ", "oxtpby driver ", "mark a ", "lofts 46 ", "kg ", "½", "order 5 "])(
    "reads 2,000 characters of %j in a moment",
    (piece) => {
      const text = piece.repeat(2000).slice(0, 2000);
      expect(read(text).faults.length).toBeLessThanOrEqual(2000);
    },
  );
});
