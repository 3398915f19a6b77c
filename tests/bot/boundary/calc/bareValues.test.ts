import { describe, expect, it } from "vitest";
import { aimFields } from "../../../../bot/boundary/calc/aimFields.ts";
import { bendFields } from "../../../../bot/boundary/calc/bendFields.ts";
import { bendText } from "../../../../bot/boundary/calc/bendText.ts";
import { changeOf } from "../../../../bot/boundary/calc/changeOf.ts";
import { readCalc } from "../../../../bot/boundary/calc/readCalc.ts";

const bend = (text: string) => readCalc(bendText(text), bendFields);
const numbers = (text: string, name: "squared loft" | "lie" | "bounce" | "bent") => bend(text).values[name]?.map(({ value }) => value);

describe("readCalc: values without their names, by common practice, no source", () => {
  it.each([
    ["56 to 54", "squared loft", [56, 54]],
    ["56 54", "squared loft", [56, 54]],
    ["56 > 54, bounce 10", "squared loft", [56, 54]],
    ["loft 56, 431 stainless", "squared loft", [56]],
    ["2 stronger", "squared loft", [-2]],
    ["1/2 weaker", "squared loft", [0.5]],
    ["7 iron 34 to 33", "squared loft", [34, 33]],
    ["56/10 to 54/8", "bounce", [10, 8]],
    ["64 1/2 to 64", "squared loft", [64.5, 64]],
    ["1° flat", "lie", [-1]],
    ["lie half upright", "lie", [0.5]],
    ["lie 64 to 63 56 to 54", "lie", [64, 63, 56, 54]],
    ["2 less bounce", "bounce", [-2]],
    ["56 to 54, bent 1 stronger 2 before", "bent", [-1, 2]],
  ] as const)("reads %s: %s", (text, name, wanted) => expect(numbers(text, name)).toEqual(wanted));

  it.each([
    ["soft carbon forged", { material: "carbon steel", construction: "forged" }],
    ["17-4 stainless steel", { material: "17-4 stainless" }],
    ["17-4PH cast sw", { material: "17-4 stainless", construction: "cast", club: "wedge" }],
    ["stainless 304", { material: "304 stainless" }],
    ["bonded 3 wood, skilled technician", { construction: "bonded fairway", club: "fairway", technician: "skilled" }],
  ])("reads the words %s", (text, wanted) => expect(bend(text).values).toEqual(wanted));

  it.each([
    ["4 upright 120 yd loft 46", { "lie error": 4, distance: 109.728 }],
    ["loft 46 120 2 flat", { "lie error": -2, distance: 109.728 }],
  ])("gives a number to the field it fits: %s", (text, wanted) => {
    const { values, faults } = readCalc(text, aimFields);
    expect([values["lie error"]?.value, Number(values.distance?.value.toFixed(9))]).toEqual(Object.values(wanted));
    expect(faults).toEqual([]);
  });

  it("leaves a name without a value alone where it is what is asked, and nowhere else", () => {
    expect(bend("56 to 54, what bounce?").faults).toEqual([]);
    expect(bend("56 to 54, maker").faults).toHaveLength(1);
  });

  it.each(["lefty", "left hand", "hand left", "left-handed", "LH"])("reads the hand of %s", (text) => {
    expect(readCalc(`loft 46 lie 2 ${text}`, aimFields).values.hand).toBe("left");
  });

  it.each(["56/10 ", "1 upright ", "56 to ", "bent 1 ", "17-4 ", "1/2 open "])("reads 2,000 characters of %j in a moment", (piece) => {
    const { faults } = bend(piece.repeat(2000).slice(0, 2000));
    expect(faults.length).toBeLessThanOrEqual(2000);
  });
});

describe("changeOf", () => {
  const exact = (value: number) => ({ value, change: false, written: String(value), unit: "°" });
  const by = (value: number) => ({ ...exact(value), change: true });

  it.each([
    ["from and to", [exact(56), exact(54)], 55, { fromDeg: 56, changeDeg: -2 }],
    ["from and a change", [exact(56), by(-2)], 55, { fromDeg: 56, changeDeg: -2 }],
    ["a change of what is on record", [by(-2)], 55, { fromDeg: 55, changeDeg: -2 }],
    ["a change of nobody knows what", [by(-2)], null, { fromDeg: null, changeDeg: -2 }],
    ["what is wanted of what is on record", [exact(54)], 55, { fromDeg: 55, changeDeg: -1 }],
    ["what it has, when nothing is on record", [exact(54)], null, { fromDeg: 54, changeDeg: null }],
    ["nothing but the record", [], 55, { fromDeg: 55, changeDeg: null }],
  ])("reads %s", (_what, written, known, wanted) => expect(changeOf(written, known)).toEqual(wanted));
});
