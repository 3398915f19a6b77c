import fc from "fast-check";
import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { cureMinutes } from "../../../core/rules/cureMinutes.ts";
import published from "../../../fixtures/published/waits.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";

const temperature = fc.double({ min: 5, max: 45, noNaN: true });

describe(byTable(cureMinutes, "waits", published), () => {
  it.each(published.cure)("makes $sheetMin min at $sheetC °C $min min at $roomC °C ($source)", ({ sheetMin, sheetC, roomC, min }) => {
    expect(Math.abs(cureMinutes(sheetMin, sheetC, roomC) - min)).toBeLessThan(published.tolerance);
  });
});

describe(byLaw(cureMinutes, "there and back in temperature is the same wait"), () => {
  it("from the sheet to a room and back", () => {
    fc.assert(
      fc.property(temperature, temperature, (sheetC, roomC) => {
        expect(cureMinutes(cureMinutes(60, sheetC, roomC), roomC, sheetC)).toBeCloseTo(60, 9);
      }),
    );
  });
});

describe(byLibrary(cureMinutes, "mathjs", "the Arrhenius law with 50 kJ/mol, which the rule of ten degrees is drawn from"), () => {
  it.each([5, 13, 18, 28, 33, 45])("agrees within 13 % at %d °C", (roomC) => {
    const wanted: number = evaluate("60 * exp(50000 / 8.314462618 * (1 / (room + 273.15) - 1 / 296.15))", { room: roomC });
    expect(Math.abs(cureMinutes(60, 23, roomC) / wanted - 1)).toBeLessThan(0.13);
  });
});

describe("cureMinutes", () => {
  it("takes the ends of its range", () => {
    expect(cureMinutes(0, 5, 45)).toBe(0);
    expect(cureMinutes(10080, 45, 45)).toBe(10080);
  });

  it.each([
    ["a wait below nothing", [-1, 23, 23], "sheetMin"],
    ["a wait past a week", [10081, 23, 23], "sheetMin"],
    ["a wait that is no number", [Number.NaN, 23, 23], "sheetMin"],
    ["a sheet of 4.9 °C", [60, 4.9, 23], "sheetC"],
    ["a sheet of 45.1 °C", [60, 45.1, 23], "sheetC"],
    ["a room of 4.9 °C", [60, 23, 4.9], "roomC"],
    ["a room of 45.1 °C", [60, 23, 45.1], "roomC"],
    ["an infinite room", [60, 23, Number.NEGATIVE_INFINITY], "roomC"],
  ] as const)("refuses %s", (_, [sheetMin, sheetC, roomC], field) => {
    expect(() => cureMinutes(sheetMin, sheetC, roomC)).toThrow(
      `quantity-out-of-range {"field":"${field}","unit":"${field === "sheetMin" ? "min" : "°C"}"`,
    );
  });
});
