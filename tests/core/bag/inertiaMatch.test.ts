import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inertiaMatch } from "../../../core/bag/inertiaMatch.ts";
import type { ClubName } from "../../../core/kinds.ts";
import { grams, kilogramSquareCentimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/setMatch.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const club = (inertia: number, headFromCapMm: number = mmFromInches(published.headFromCapIn), name = "7i") => ({
  club: name as ClubName,
  inertiaKgCm2: kilogramSquareCentimetres(inertia),
  headFromCapMm: millimetres(headFromCapMm),
});
const target = kilogramSquareCentimetres(2700);

describe(byTable(inertiaMatch, "setMatch", published), () => {
  it("takes half a gram off a 7-iron for 2600 kg·cm²", () => {
    const { inertiaKgCm2, massG, ...row } = published.inertia;
    const [got] = inertiaMatch([club(inertiaKgCm2)], kilogramSquareCentimetres(row.target)).rows;
    expect(Math.abs((got?.exactMassG ?? Number.NaN) - massG)).toBeLessThan(published.tolerance.inertiaMassG);
  });
});

describe(byLaw(inertiaMatch, "a mass at the radius x adds m·x²; without a step nothing is left apart"), () => {
  const clubs = fc.array(fc.tuple(fc.double({ min: 2500, max: 3000, noNaN: true }), fc.double({ min: 80, max: 120, noNaN: true })), {
    minLength: 1,
    maxLength: 14,
  });

  it("meets the target exactly, or to half a step", () => {
    fc.assert(
      fc.property(clubs, (given) => {
        const set = given.map(([inertia, headCm]) => club(inertia, headCm * 10));
        const [exact, stepped] = [inertiaMatch(set, target, grams(0)), inertiaMatch(set, target, grams(0.5))];
        given.forEach(([inertia, headCm], index) => {
          const afterAdding = (massG = Number.NaN) => inertia + (massG / 1000) * headCm * headCm;
          const [one, other] = [exact.rows[index], stepped.rows[index]];
          expect(afterAdding(one?.massG)).toBeCloseTo(target, 6);
          expect(one?.inertiaAfterKgCm2).toBeCloseTo(target, 6);
          expect(other?.inertiaAfterKgCm2).toBeCloseTo(afterAdding(other?.massG), 6);
          expect(Math.abs((other?.massG ?? Number.NaN) - (other?.exactMassG ?? Number.NaN))).toBeLessThanOrEqual(0.25 + 1e-9);
        });
        expect(exact.spreadAfterKgCm2).toBeCloseTo(0, 6);
      }),
    );
  });
});

describe("inertiaMatch", () => {
  it("doses in half grams by default, takes off where a club is heavy, and tells the spread before and after", () => {
    const set = [club(2670, 936, "7i"), club(2720, 930, "8i"), club(2700, 960, "6i")];
    const { rows, spreadBeforeKgCm2, spreadAfterKgCm2 } = inertiaMatch(set, target);
    expect(rows.map((row) => [row.club, row.massG])).toEqual([
      ["7i", 3.5],
      ["8i", -2.5],
      ["6i", 0],
    ]);
    expect(spreadBeforeKgCm2).toBe(50);
    const after = rows.map((row) => row.inertiaAfterKgCm2);
    expect(spreadAfterKgCm2).toBeCloseTo(Math.max(...after) - Math.min(...after), 9);
  });

  it.each([
    ["inertiaKgCm2", 100, 20_000, (value: number) => inertiaMatch([club(value)], target)],
    ["headFromCapMm", 100, 2000, (value: number) => inertiaMatch([club(2700, value)], target)],
    ["targetKgCm2", 100, 20_000, (value: number) => inertiaMatch([club(2700)], kilogramSquareCentimetres(value))],
    ["massStepG", 0, 50, (value: number) => inertiaMatch([club(2700)], target, grams(value))],
  ] as const)("takes a %s from %d to %d and refuses what is past it", (field, min, max, of) => {
    expect(() => of(min)).not.toThrow();
    expect(() => of(max)).not.toThrow();
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN]) {
      expect(() => of(wrong)).toThrow(`"field":"${field}"`);
    }
  });

  it("refuses a club no one knows, and says which", () => {
    expect(() => inertiaMatch([club(2700), club(2700, 936, "12i")], target)).toThrow('quantity-unreadable {"field":"club","written":"12i"');
  });

  it("takes 1 to 40 clubs and refuses none or more", () => {
    const of = (count: number) => () =>
      inertiaMatch(
        Array.from({ length: count }, () => club(2700)),
        target,
      );
    expect(of(1)).not.toThrow();
    expect(of(40)).not.toThrow();
    expect(of(0)).toThrow("list-of-wrong-size");
    expect(of(41)).toThrow("list-of-wrong-size");
  });
});
