import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { afterBend, type BendableHead } from "../../../core/head/afterBend.ts";
import { bendFor } from "../../../core/head/bendFor.ts";
import { degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/bending.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const wedge: BendableHead = { squaredLoftDeg: degrees(56), seatedLieDeg: degrees(64), bounceDeg: degrees(10) };

describe(byTable(bendFor, "bending", published), () => {
  it.each(published.rows)("finds the bend that takes $loftDeg/$bounceDeg to $loftAfterDeg/$bounceAfterDeg", (row) => {
    const before = { ...wedge, squaredLoftDeg: degrees(row.loftDeg), bounceDeg: degrees(row.bounceDeg) };
    const answer = bendFor(before, { squaredLoftDeg: degrees(row.loftAfterDeg), bounceDeg: degrees(row.bounceAfterDeg) });
    expect(answer).toMatchObject({ kind: "bend", bend: { loftChangeDeg: row.loftChangeDeg, lieChangeDeg: 0 } });
  });
});

describe(byLaw(bendFor, "the head after the bend reads what was wished"), () => {
  it("undoes afterBend", () => {
    const change = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(change, change, (loft, lie) => {
        const after = afterBend(wedge, { loftChangeDeg: degrees(loft), lieChangeDeg: degrees(lie) });
        const answer = bendFor(wedge, after);
        expect(answer.kind).toBe("bend");
        const bend = answer.kind === "bend" ? answer.bend : answer.nearest.bend;
        expect(bend.loftChangeDeg).toBeCloseTo(loft, 9);
        expect(bend.lieChangeDeg).toBeCloseTo(lie, 9);
      }),
    );
  });
});

describe("bendFor", () => {
  it("lets the bounce come as it comes, and leaves what is not wished", () => {
    const strong = bendFor(wedge, { squaredLoftDeg: degrees(54) });
    expect(strong).toMatchObject({ kind: "bend", bend: { loftChangeDeg: -2, lieChangeDeg: 0 }, after: { bounceDeg: 8, seatedLieDeg: 64 } });
    const upright = bendFor(wedge, { seatedLieDeg: degrees(65) });
    expect(upright).toMatchObject({ kind: "bend", bend: { loftChangeDeg: 0, lieChangeDeg: 1 }, after: { squaredLoftDeg: 56, bounceDeg: 10 } });
    expect(bendFor(wedge, {})).toMatchObject({ kind: "bend", bend: { loftChangeDeg: 0, lieChangeDeg: 0 } });
    expect(bendFor(wedge, { bounceDeg: null, seatedLieDeg: null, squaredLoftDeg: null })).toMatchObject({ kind: "bend" });
  });

  it("refuses less bounce at the same loft: that is another grind or sole work", () => {
    const answer = bendFor(wedge, { bounceDeg: degrees(8), seatedLieDeg: degrees(63) });
    expect(answer).toMatchObject({
      kind: "refused",
      why: "bounce-goes-with-loft",
      remedy: "another-grind-or-sole-work",
      nearest: { bend: { loftChangeDeg: 0, lieChangeDeg: -1 }, after: { squaredLoftDeg: 56, seatedLieDeg: 63, bounceDeg: 10 } },
      wantedBounceDeg: 8,
      bounceMissDeg: -2,
      loftAtWantedBounceDeg: 54,
    });
  });

  it("refuses loft and bounce that move apart, and bends to the loft", () => {
    const answer = bendFor(wedge, { squaredLoftDeg: degrees(55), bounceDeg: degrees(11) });
    expect(answer).toMatchObject({ kind: "refused", nearest: { bend: { loftChangeDeg: -1 } }, bounceMissDeg: 2, loftAtWantedBounceDeg: 57 });
  });

  it("meets a bounce to the last digits a machine rounds, and no farther", () => {
    expect(bendFor(wedge, { bounceDeg: degrees(10 + 5e-10) }).kind).toBe("bend");
    expect(bendFor(wedge, { bounceDeg: degrees(10 - 5e-10) }).kind).toBe("bend");
    expect(bendFor(wedge, { bounceDeg: degrees(10.001) }).kind).toBe("refused");
    expect(bendFor(wedge, { bounceDeg: degrees(9.999) }).kind).toBe("refused");
  });

  it.each([
    ["squaredLoftDeg", -15, 75],
    ["seatedLieDeg", 40, 85],
  ])("takes a wished %s from %d to %d and refuses what is past it", (field, min, max) => {
    const of = (start: number, value: number) => () => bendFor({ ...wedge, [field]: start }, { [field]: value });
    expect(of(min, min)).not.toThrow();
    expect(of(max, max)).not.toThrow();
    expect(of(min, min - 0.001)).toThrow(`"field":"wished ${field}"`);
    expect(of(max, max + 0.001)).toThrow(`"field":"wished ${field}"`);
    expect(of(min, Number.NaN)).toThrow(`"field":"wished ${field}"`);
    expect(of(min, min + 10)).not.toThrow();
    expect(of(min, min + 10.001)).toThrow("ChangeDeg");
  });

  it("takes a wished bounce from -10° to 30° and refuses what is past it", () => {
    const of = (value: number) => () => bendFor(wedge, { bounceDeg: degrees(value) });
    expect(of(-10)).not.toThrow();
    expect(of(30)).not.toThrow();
    for (const wrong of [-10.001, 30.001, Number.NaN]) {
      expect(of(wrong)).toThrow('"field":"wished bounceDeg"');
    }
  });
});
