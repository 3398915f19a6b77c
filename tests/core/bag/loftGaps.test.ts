import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultGapLimits, loftGaps } from "../../../core/bag/loftGaps.ts";
import type { ClubName } from "../../../core/kinds.ts";
import { type Degrees, degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/setSteps.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

type Lofts = Parameters<typeof loftGaps>[0];
const set = (...lofts: readonly (readonly [string, number | null])[]): Lofts =>
  lofts.map(([club, loft]) => ({ club: club as ClubName, squaredLoftDeg: loft as Degrees | null }));
const usual = set(...(published.lofts as [string, number][]));
const flagOf = (...lofts: readonly (readonly [string, number])[]) => loftGaps(set(...lofts)).gaps[0]?.flag;

describe(byTable(loftGaps, "setSteps", published), () => {
  const { gaps } = loftGaps(usual);

  it.each(published.gaps as [string, string, number, string | null][])("from %s to %s is %d°, %s", (stronger, weaker, gapDeg, flag) => {
    const gap = gaps.find((each) => each.stronger === stronger);
    expect(Math.abs((gap?.gapDeg ?? Number.NaN) - gapDeg)).toBeLessThan(published.tolerance);
    expect([gap?.weaker, gap?.flag]).toEqual([weaker, flag]);
  });

  it("has no other gap", () => {
    expect(gaps).toHaveLength(published.gaps.length);
  });
});

describe(byLaw(loftGaps, "the order of the clubs changes nothing, and the gaps add up to the whole"), () => {
  it("sorts for itself, equal lofts too", () => {
    const clubs = [...usual, ...set(["2h", 20], ["3i", 20], ["4w", null], ["2i", null], ["putter", 3])];
    fc.assert(
      fc.property(fc.shuffledSubarray(clubs, { minLength: clubs.length }), (shuffled) => {
        expect(loftGaps(shuffled)).toEqual(loftGaps(clubs));
      }),
    );
    const sum = loftGaps(clubs).gaps.reduce((total, { gapDeg }) => total + gapDeg, 0);
    expect(sum).toBeCloseTo(60 - 9.5, 9);
  });
});

describe("loftGaps", () => {
  it.each([
    ["6i", "7i", 2.99, "narrow"],
    ["6i", "7i", 3, null],
    ["6i", "7i", 5, null],
    ["6i", "7i", 5.01, "wide"],
    ["gw", "sw", 3.99, "narrow"],
    ["gw", "sw", 4, null],
    ["gw", "sw", 6, null],
    ["gw", "sw", 6.01, "wide"],
    ["9i", "pw", 5.5, "wide"],
    ["pw", "9i", 5.5, "wide"],
    ["9i", "pw", 3.5, null],
    ["4h", "4i", 0.17, "equal"],
    ["4h", "4i", 0, "equal"],
    ["4h", "4i", 0.18, "narrow"],
  ])("flags %s to %s, %d° apart, as %s", (stronger, weaker, apartDeg, flag) => {
    expect(flagOf([stronger, 30], [weaker, 30 + apartDeg])).toBe(flag);
  });

  it("does not trip over the last digit of tenths", () => {
    expect(flagOf(["6i", 30.1], ["7i", 33.1])).toBeNull();
    expect(flagOf(["6i", 30.4], ["7i", 35.4])).toBeNull();
    expect(flagOf(["6i", 0.1], ["7i", 3.1 - 1e-12])).toBeNull();
    expect(flagOf(["6i", 0.1], ["7i", 5.1 + 1e-12])).toBeNull();
  });

  it("names clubs nobody has measured, leaves out the putter, and says what gaps of loft do not say", () => {
    const { gaps, missing, caveat } = loftGaps(set(["7i", 34], ["6i", null], ["5i", 27], ["putter", 3], ["4i", null]));
    expect(gaps).toEqual([{ stronger: "5i", weaker: "7i", gapDeg: 7, limits: { minDeg: 3, maxDeg: 5 }, flag: "wide" }]);
    expect(missing).toEqual(["4i", "6i"]);
    expect(caveat).toBe("loft-gaps-are-not-carry-gaps");
  });

  it("does not miss the loft of a putter", () => {
    expect(loftGaps(set(["putter", null])).missing).toEqual([]);
  });

  it("has no gap between fewer than two clubs", () => {
    expect(loftGaps([]).gaps).toEqual([]);
    expect(loftGaps(set(["7i", 34])).gaps).toEqual([]);
  });

  it("takes other limits than the defaults", () => {
    const limits = { ...defaultGapLimits, others: { minDeg: degrees(5), maxDeg: degrees(8) } };
    expect(loftGaps(set(["5i", 27], ["7i", 34]), limits).gaps[0]).toMatchObject({ flag: null, limits: { minDeg: 5, maxDeg: 8 } });
  });

  it("takes lofts from -15° to 75° and refuses what is past them, of a putter too", () => {
    expect(() => loftGaps(set(["putter", -15], ["lw", 75]))).not.toThrow();
    for (const wrong of [-15.001, 75.001, Number.NaN]) {
      expect(() => loftGaps(set(["putter", wrong]))).toThrow('"field":"squaredLoftDeg"');
    }
  });

  it.each(["wedges", "others"] as const)("refuses limits of %s that are none", (kind) => {
    const of = (minDeg: number, maxDeg: number) => () => loftGaps([], { ...defaultGapLimits, [kind]: { minDeg, maxDeg } });
    expect(of(0, 30)).not.toThrow();
    expect(of(30, 30)).not.toThrow();
    expect(of(-0.001, 5)).toThrow('"field":"minDeg"');
    expect(of(30.001, 40)).toThrow('"field":"minDeg"');
    expect(of(Number.NaN, 5)).toThrow('"field":"minDeg"');
    expect(of(3, 30.001)).toThrow('"field":"maxDeg"');
    expect(of(3, 2.999)).toThrow('"field":"maxDeg"');
    expect(of(3, Number.NaN)).toThrow('"field":"maxDeg"');
  });

  it("refuses a club no one knows, and says which", () => {
    expect(() => loftGaps(set(["7i", 34], ["12i", 60]))).toThrow('quantity-unreadable {"field":"club","written":"12i"');
  });

  it("takes a loft that was left out as not measured", () => {
    const { gaps, missing } = loftGaps([{ club: "6i" as ClubName }, ...set(["5i", 27], ["7i", 34])]);
    expect(gaps.map(({ gapDeg }) => gapDeg)).toEqual([7]);
    expect(missing).toEqual(["6i"]);
  });

  it("takes 40 clubs and refuses one more", () => {
    const many = (count: number) => set(...Array.from({ length: count }, () => ["7i", 34] as const));
    expect(() => loftGaps(many(40))).not.toThrow();
    expect(() => loftGaps(many(41))).toThrow("list-of-wrong-size");
  });
});
