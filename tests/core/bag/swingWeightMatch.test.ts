import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { swingWeightMatch } from "../../../core/bag/swingWeightMatch.ts";
import { pointsOfMass } from "../../../core/club/massAtPosition.ts";
import type { ClubName } from "../../../core/kinds.ts";
import { grams, millimetres, mmFromInches, swingWeightPoints } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/setMatch.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const club = (points: number, headFromCapMm: number = mmFromInches(published.headFromCapIn), name = "7i") => ({
  club: name as ClubName,
  swingWeightPoints: swingWeightPoints(points),
  headFromCapMm: millimetres(headFromCapMm),
});

describe(byTable(swingWeightMatch, "setMatch", published), () => {
  it.each(published.swingWeight)("adds $massG g to a 7-iron of $points points for $target", ({ points, target, massG }) => {
    const [row] = swingWeightMatch([club(points)], swingWeightPoints(target)).rows;
    expect(Math.abs((row?.exactMassG ?? Number.NaN) - massG)).toBeLessThan(published.tolerance.massG);
  });

  it("adds about 4.3 g for two points", () => {
    const { points, target, massG } = published.twoPoints;
    const [row] = swingWeightMatch([club(points)], swingWeightPoints(target)).rows;
    expect(Math.abs((row?.exactMassG ?? Number.NaN) - massG)).toBeLessThan(published.tolerance.setMassG);
  });
});

describe(byLaw(swingWeightMatch, "the moments of the added masses are the points missing; without a step nothing is left apart"), () => {
  const clubs = fc.array(
    fc.tuple(fc.double({ min: -10, max: 15, noNaN: true }), fc.double({ min: 800, max: 1200, noNaN: true })).map(([points, at]) => club(points, at)),
    { minLength: 1, maxLength: 14 },
  );

  it("meets the target exactly, or to half a step", () => {
    fc.assert(
      fc.property(clubs, fc.double({ min: -5, max: 10, noNaN: true }), (set, target) => {
        const exact = swingWeightMatch(set, swingWeightPoints(target), grams(0));
        const stepped = swingWeightMatch(set, swingWeightPoints(target), grams(0.5));
        set.forEach(({ swingWeightPoints: before, headFromCapMm }, index) => {
          const [one, other] = [exact.rows[index], stepped.rows[index]];
          const moved = (massG: number) => pointsOfMass(grams(massG), headFromCapMm);
          expect(before + moved(one?.massG ?? Number.NaN)).toBeCloseTo(target, 9);
          expect(one?.pointsAfter).toBeCloseTo(target, 9);
          expect(other?.pointsAfter).toBeCloseTo(before + moved(other?.massG ?? Number.NaN), 9);
          expect(Math.abs((other?.massG ?? Number.NaN) - (other?.exactMassG ?? Number.NaN))).toBeLessThanOrEqual(0.25 + 1e-9);
        });
        expect(exact.spreadAfterPoints).toBeCloseTo(0, 9);
      }),
    );
  });
});

describe("swingWeightMatch", () => {
  it("doses in half grams by default, takes off where a club is heavy, and tells the spread before and after", () => {
    const set = [club(0, 936, "7i"), club(2.5, 936, "8i"), club(2, 1130, "driver")];
    const { rows, spreadBeforePoints, spreadAfterPoints } = swingWeightMatch(set, swingWeightPoints(2));
    expect(rows.map((row) => [row.club, row.massG])).toEqual([
      ["7i", 4.5],
      ["8i", -1],
      ["driver", 0],
    ]);
    expect(spreadBeforePoints).toBe(2.5);
    const after = rows.map((row) => row.pointsAfter);
    expect(spreadAfterPoints).toBeCloseTo(Math.max(...after) - Math.min(...after), 12);
    expect(spreadAfterPoints).toBeLessThan(0.2);
  });

  it("writes no minus before a mass of nothing", () => {
    expect(Object.is(swingWeightMatch([club(2.01)], swingWeightPoints(2)).rows[0]?.massG, 0)).toBe(true);
  });

  it.each([
    ["swingWeightPoints", -100, 100, (value: number) => swingWeightMatch([club(value)], swingWeightPoints(2))],
    ["headFromCapMm", 14 * 25.4 + 50, 2000, (value: number) => swingWeightMatch([club(2, value)], swingWeightPoints(2))],
    ["targetPoints", -100, 100, (value: number) => swingWeightMatch([club(2)], swingWeightPoints(value))],
    ["massStepG", 0, 50, (value: number) => swingWeightMatch([club(2)], swingWeightPoints(2), grams(value))],
  ] as const)("takes a %s from %d to %d and refuses what is past it", (field, min, max, of) => {
    expect(() => of(min)).not.toThrow();
    expect(() => of(max)).not.toThrow();
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN]) {
      expect(() => of(wrong)).toThrow(`"field":"${field}"`);
    }
  });

  it("refuses a club no one knows, and says which", () => {
    expect(() => swingWeightMatch([club(2), club(2, 936, "12i")], swingWeightPoints(2))).toThrow(
      'quantity-unreadable {"field":"club","written":"12i"',
    );
  });

  it("takes 1 to 40 clubs and refuses none or more", () => {
    const of = (count: number) => () =>
      swingWeightMatch(
        Array.from({ length: count }, () => club(2)),
        swingWeightPoints(2),
      );
    expect(of(1)).not.toThrow();
    expect(of(40)).not.toThrow();
    expect(of(0)).toThrow("list-of-wrong-size");
    expect(of(41)).toThrow("list-of-wrong-size");
  });
});
