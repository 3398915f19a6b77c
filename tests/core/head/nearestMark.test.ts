import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { type AttitudeWish, nearestMark } from "../../../core/head/nearestMark.ts";
import type { OnePieceSleeve } from "../../../core/head/sleeve.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { defaultSelectionTolerances } from "../../../core/selection/selectionTolerances.ts";
import published from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { bareHead, sleeveOf, someHeads, tilted } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const head = bareHead(published.head);
const clocks = [270, 225, 180, 135, 90, 45, 0, 315];
const sleeve = sleeveOf(1.5, clocks);
const tolerances = { squaredLoftDeg: 0.25, soledFaceDeg: 0.5, seatedLieDeg: 0.5, scoreBand: 0.25 };
const wishOf = (wish: { readonly [K in keyof AttitudeWish]: number }) => wish as AttitudeWish;
const loftAt = (clockDeg: number, tiltDeg = 1.5) => attitudeOf(head, tilted(tiltDeg, clockDeg)).squaredLoftDeg;

describe(byTable(nearestMark, "sleeveGeometry", published), () => {
  it.each(published.rows.filter(({ tiltDeg }) => tiltDeg === 1.5))(
    "finds the mark at $clockDeg from its published readings",
    ({ clockDeg, ...row }) => {
      const { squaredLoftDeg, soledFaceDeg, seatedLieDeg } = row;
      const [first] = nearestMark(head, sleeve, wishOf({ squaredLoftDeg, soledFaceDeg, seatedLieDeg }));
      expect(first?.mark).toBe(String(clockDeg));
      expect(first?.score).toBeLessThan(1e-4);
      expect(first?.misses).toEqual([]);
    },
  );
});

describe(byLaw(nearestMark, "what a mark reads leads back to the mark, in either hand"), () => {
  it("finds the mark whose readings are wished", () => {
    fc.assert(
      fc.property(someHeads, fc.constantFrom(...clocks), (someHead, clockDeg) => {
        const { squaredLoftDeg, soledFaceDeg, seatedLieDeg } = attitudeOf(someHead, tilted(1.5, clockDeg));
        const ranked = nearestMark(someHead, sleeve, { squaredLoftDeg, soledFaceDeg, seatedLieDeg });
        expect(ranked[0]?.mark).toBe(String(clockDeg));
        expect(ranked[0]?.score).toBeCloseTo(0, 9);
        expect(ranked).toHaveLength(clocks.length);
      }),
    );
  });
});

describe("nearestMark", () => {
  it("puts the standard mark first when nothing is wished, then the order of the sleeve", () => {
    const order = (standard: string) => nearestMark(head, sleeveOf(1.5, clocks, standard), {}).map(({ mark }) => mark);
    expect(order("270")).toEqual(clocks.map(String));
    expect(order("180")).toEqual(["180", "270", "225", "135", "90", "45", "0", "315"]);
  });

  it("prefers the standard mark among equals: loft says nothing of upright or flat", () => {
    const order = (standard: string) => nearestMark(head, sleeveOf(1.5, [270, 90], standard), wishOf({ squaredLoftDeg: 9 }));
    expect(order("90").map(({ mark, standard }) => [mark, standard])).toEqual([
      ["90", true],
      ["270", false],
    ]);
    expect(order("270")[0]?.mark).toBe("270");
  });

  it("turns the sleeve once another mark is nearer by more than a band of scores", () => {
    const wanted = (share: number) => wishOf({ squaredLoftDeg: loftAt(270) + share * 0.25 });
    const pair = sleeveOf(0.05, [270, 0]);
    /** The mark at 0 reads about 0.24 of a tolerance more than the standard. */
    const gain = (loftAt(0, 0.05) - 9) / 0.25;
    expect(gain).toBeCloseTo(0.236, 2);
    expect(nearestMark(head, pair, wanted(0.49))[0]?.mark).toBe("270");
    expect(nearestMark(head, pair, wanted(0.51))[0]?.mark).toBe("0");
  });

  it("scores in squared tolerances and names what is past them", () => {
    const [first] = nearestMark(head, sleeveOf(1, [270]), wishOf({ squaredLoftDeg: 8.5, soledFaceDeg: 0.5, seatedLieDeg: 57.6 }));
    expect(first?.score).toBeCloseTo(2 ** 2 + 1 ** 2 + 1.2 ** 2, 9);
    expect(first?.misses).toEqual([
      { reading: "squaredLoftDeg", wantedDeg: 8.5, gotDeg: expect.closeTo(9, 9), toleranceDeg: 0.25 },
      { reading: "seatedLieDeg", wantedDeg: 57.6, gotDeg: expect.closeTo(57, 9), toleranceDeg: 0.5 },
    ]);
  });

  it("puts fewer misses before a lower score within one band", () => {
    const [half, full] = [attitudeOf(head, tilted(1, 225)), attitudeOf(head, tilted(1, 180))];
    /** The half mark is 1.1 tolerances of loft off and none of lie, scoring 1.21; the full mark 0.9 of each, scoring 1.62. */
    const squaredLoftDeg = (half.squaredLoftDeg - full.squaredLoftDeg) / 2;
    const seatedLieDeg = (full.seatedLieDeg - half.seatedLieDeg) / 0.9;
    const wish = wishOf({ squaredLoftDeg: full.squaredLoftDeg + 0.9 * squaredLoftDeg, seatedLieDeg: half.seatedLieDeg });
    const order = (scoreBand: number) =>
      nearestMark(head, sleeveOf(1, [0, 225, 180]), wish, { ...tolerances, squaredLoftDeg, seatedLieDeg, scoreBand }).map(({ mark }) => mark);
    expect(order(2)).toEqual(["180", "225", "0"]);
    expect(order(0.25)).toEqual(["225", "180", "0"]);
  });

  it("weighs by the tolerances asked for", () => {
    const wish = wishOf({ squaredLoftDeg: loftAt(180), soledFaceDeg: 0 });
    const first = (soledFaceDeg: number) => nearestMark(head, sleeve, wish, { ...tolerances, soledFaceDeg })[0]?.mark;
    expect(first(20)).toBe("180");
    expect(first(0.01)).toBe("270");
  });

  it("takes the tolerances by which heads are chosen when none are given", () => {
    const wish = wishOf({ squaredLoftDeg: 8.2, soledFaceDeg: 1, seatedLieDeg: 57 });
    expect(nearestMark(head, sleeve, wish)).toEqual(nearestMark(head, sleeve, wish, defaultSelectionTolerances));
    expect(nearestMark(head, sleeve, wish)).toEqual(nearestMark(head, sleeve, wish, tolerances));
  });

  it("ranks the settings of two pieces", () => {
    const piece = ({ tiltDeg, marks }: OnePieceSleeve) => ({ tiltDeg, marks });
    const pieces = { ring: piece(sleeveOf(0.75, [0, 180])), sleeve: piece(sleeveOf(0.75, [0, 180])), standardMark: "0 180" };
    const [first, second] = nearestMark(head, pieces, wishOf({ squaredLoftDeg: 9 }));
    expect([first?.mark, second?.mark]).toEqual(["0 180", "180 0"]);
  });

  it("refuses every number of its call when it is none", () => {
    const wish = wishOf({ squaredLoftDeg: 9, soledFaceDeg: 0, seatedLieDeg: 57 });
    for (const { where, args } of spoiled([head, sleeve, wish, tolerances] as const)) {
      expect(() => nearestMark(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it.each([
    ["squaredLoftDeg", -15, 75],
    ["soledFaceDeg", -30, 30],
    ["seatedLieDeg", 35, 90],
  ] as const)("takes a wished %s from %d to %d and nothing past that", (reading, min, max) => {
    const wish = (value: number) => () => nearestMark(head, sleeve, wishOf({ [reading]: value }));
    expect(wish(min)).not.toThrow();
    expect(wish(max)).not.toThrow();
    expect(wish(min - 0.001)).toThrow(`"field":"${reading}"`);
    expect(wish(max + 0.001)).toThrow(`"field":"${reading}"`);
  });

  it.each([
    ["squaredLoftDeg", 0.01, 20],
    ["soledFaceDeg", 0.01, 20],
    ["seatedLieDeg", 0.01, 20],
    ["scoreBand", 0.001, 100],
  ] as const)("takes a %s of the tolerances from %d to %d and nothing past that", (part, min, max) => {
    const by = (value: number) => () => nearestMark(head, sleeve, {}, { ...tolerances, [part]: degrees(value) });
    expect(by(min)).not.toThrow();
    expect(by(max)).not.toThrow();
    expect(by(min / 2)).toThrow(part);
    expect(by(max + 0.001)).toThrow(part);
  });
});
