import { describe, expect, it } from "vitest";
import type { Deviation, HeadChoice } from "../../../core/buildSheet/plan.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { givenUp } from "../../../core/selection/givenUp.ts";
import { someHead } from "../buildSheet/someParts.ts";

const deviation = (quantity: Deviation["quantity"], got: number): Deviation => ({ quantity, wanted: 10, got, tolerance: 1 });

const choice = (given: Partial<HeadChoice>): HeadChoice => ({
  head: someHead({}),
  sleeve: null,
  mark: null,
  atPreferredMark: true,
  attitude: { squaredLoftDeg: degrees(10), squaredLoftAtDesignLieDeg: degrees(10), soledFaceDeg: degrees(0), seatedLieDeg: degrees(58) },
  bounceDeg: null,
  bend: null,
  bendWarned: false,
  addedCount: 0,
  score: 0,
  deviations: [],
  misses: [],
  ...given,
});

describe("givenUp", () => {
  it.each<[Deviation["quantity"], number]>([
    ["squaredLoftDeg", 0.125],
    ["soledFaceDeg", 0.25],
    ["seatedLieDeg", 0.125],
    ["bounceDeg", 0.5],
    ["headMassG", 0.2],
  ])("tells of %s when it is further off, on either side, by more than one reading may be: %d", (quantity, error) => {
    const best = choice({ deviations: [deviation(quantity, 10.5)], bounceDeg: degrees(10) });
    const by = (got: number) => givenUp(best, choice({ deviations: [deviation(quantity, got)], bounceDeg: degrees(10) }));
    expect(by(10.5 + error)).toEqual([]);
    expect(by(9.5 - error)).toEqual([]);
    expect(by(10)).toEqual([]);
    expect(by(10.51 + error)).toEqual([{ code: "further", quantity, worseBy: expect.closeTo(error + 0.01, 9) }]);
    expect(by(9.49 - error)).toEqual([{ code: "further", quantity, worseBy: expect.closeTo(error + 0.01, 9) }]);
  });

  it("compares nothing that cannot be read of the one chosen", () => {
    expect(givenUp(choice({}), choice({ deviations: [deviation("bounceDeg", 14)], bounceDeg: degrees(14) }))).toEqual([]);
    expect(givenUp(choice({ bounceDeg: degrees(10) }), choice({}))).toEqual([]);
  });

  it("tells of a bounce that was wished and never measured", () => {
    const best = choice({ deviations: [deviation("bounceDeg", 10)], bounceDeg: degrees(10) });
    expect(givenUp(best, choice({}))).toEqual([{ code: "bounce-unknown" }]);
  });

  it("tells of a turned sleeve where the one chosen stands at its mark", () => {
    const turned = choice({ mark: "strong 1", atPreferredMark: false });
    expect(givenUp(choice({ mark: "standard" }), turned)).toEqual([{ code: "turned-sleeve", mark: "strong 1" }]);
    expect(givenUp(turned, turned)).toEqual([]);
    expect(givenUp(turned, choice({}))).toEqual([]);
  });

  it("tells of more bend in both planes together, and of less nothing", () => {
    const bent = (loft: number, lie: number) => choice({ bend: { loftChangeDeg: degrees(loft), lieChangeDeg: degrees(lie) } });
    expect(givenUp(bent(-1, 0.5), bent(0.5, -2))).toEqual([{ code: "more-bend", deg: 1 }]);
    expect(givenUp(bent(-1, 0.5), bent(1.5, 0))).toEqual([]);
    expect(givenUp(bent(-1, 0.5), choice({}))).toEqual([]);
  });

  it("tells of more weights, and of where it lies", () => {
    const away = choice({ addedCount: 2, head: someHead({ here: false, place: "home base" }) });
    expect(givenUp(choice({ addedCount: 1 }), away)).toEqual([
      { code: "more-weights", count: 1 },
      { code: "elsewhere", place: "home base" },
    ]);
    expect(givenUp(away, choice({}))).toEqual([]);
    expect(givenUp(away, away)).toEqual([]);
  });
});
