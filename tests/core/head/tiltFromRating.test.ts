import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { RATED_HEAD_LOFT_DEG, type RatingKind, tiltFromRating } from "../../../core/head/tiltFromRating.ts";
import { degrees } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/sleeveRatings.json" with { type: "json" };
import { byLibrary, byTable } from "../../support/checkOf.ts";
import { attitudeByQuaternions } from "./byQuaternions.ts";
import { bareHead, between, tilted } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const lie = degrees(published.head.designLieDeg);
const head = bareHead(published.head);
const tiltOf = (ratingDeg: number) => tiltFromRating(degrees(ratingDeg), "squared-loft", lie);

describe(byTable(tiltFromRating, "sleeveRatings", published), () => {
  it.each(published.rows)("rated $ratingDeg tilts by $tiltDeg° and opens the face by $opensFaceDeg°", ({ ratingDeg, ...wanted }) => {
    const got = tiltOf(ratingDeg);
    expect(Math.abs(got - wanted.tiltDeg)).toBeLessThan(published.tolerance / 10);
    expect(got - wanted.smallAngleDeg).toBeGreaterThan(0);
    const lowest = attitudeOf(head, { tiltDeg: got, clockDeg: degrees(180) });
    expect(lowest.squaredLoftAtDesignLieDeg).toBeCloseTo(published.head.soledLoftDeg - ratingDeg, 9);
    expect(Math.abs(lowest.soledFaceDeg - wanted.opensFaceDeg)).toBeLessThan(published.tolerance);
  });

  it("gains a little less loft on the way up than it takes off on the way down", () => {
    const { ratingDeg, tolerance, ...wanted } = published.upAgainstDown;
    const at = (clockDeg: number) => attitudeOf(head, { tiltDeg: tiltOf(ratingDeg), clockDeg: degrees(clockDeg) });
    const unlike = (reading: "squaredLoftDeg" | "squaredLoftAtDesignLieDeg") => Math.abs(at(0)[reading] + at(180)[reading] - 2 * head.soledLoftDeg);
    expect(Math.abs(unlike("squaredLoftDeg") - wanted.squaredLoftDeg)).toBeLessThan(tolerance);
    expect(Math.abs(unlike("squaredLoftAtDesignLieDeg") - wanted.squaredLoftAtDesignLieDeg)).toBeLessThan(tolerance);
  });
});

describe(byLibrary(tiltFromRating, "gl-matrix", "the lowest mark of the tilted head squared by quaternions"), () => {
  it("takes the rating off at the design lie", () => {
    fc.assert(
      fc.property(between(0.3, 4), between(54, 64), between(7, 20), (ratingDeg, designLieDeg, soledLoftDeg) => {
        const tiltDeg = tiltFromRating(degrees(ratingDeg), "squared-loft", degrees(designLieDeg), degrees(soledLoftDeg));
        const lowest = attitudeByQuaternions(bareHead({ soledLoftDeg, soledFaceDeg: 0, designLieDeg }), tilted(tiltDeg, 180));
        expect(Math.abs(lowest.squaredLoftAtDesignLieDeg - (soledLoftDeg - ratingDeg))).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("tiltFromRating", () => {
  it("takes a rating that is the tilt as it is", () => {
    expect(tiltFromRating(degrees(1.5), "tilt", lie)).toBe(1.5);
  });

  it("assumes a driver of 9°", () => {
    expect(tiltOf(2)).toBe(tiltFromRating(degrees(2), "squared-loft", lie, degrees(9)));
    expect(RATED_HEAD_LOFT_DEG).toBe(9);
  });

  it("tilts nothing when rated 0, at any lie and loft", () => {
    fc.assert(
      fc.property(between(40, 85), between(-15, 75), (designLieDeg, loft) => {
        const tilt = tiltFromRating(degrees(0), "squared-loft", degrees(designLieDeg), degrees(loft));
        expect(tilt).toBeGreaterThanOrEqual(0);
        expect(tilt).toBeLessThan(1e-9);
      }),
    );
  });

  it("refuses every number of its call when it is none, whatever the rating means", () => {
    for (const kind of ["squared-loft", "tilt"] as const) {
      for (const { where, args } of spoiled([degrees(1), kind, lie, degrees(9)] as const)) {
        expect(() => tiltFromRating(...args), where).toThrow("quantity-out-of-range");
      }
    }
  });

  it("takes a rating from 0 to 4 and nothing past that", () => {
    expect(tiltOf(4)).toBeGreaterThan(3);
    expect(() => tiltOf(4.001)).toThrow('"field":"ratingDeg"');
    expect(() => tiltOf(-0.001)).toThrow('"field":"ratingDeg"');
  });

  it("names the lie or loft it refuses", () => {
    expect(() => tiltFromRating(degrees(1), "tilt", degrees(39.999))).toThrow('"field":"designLieDeg"');
    expect(() => tiltFromRating(degrees(1), "tilt", lie, degrees(75.001))).toThrow('"field":"squaredLoftDeg"');
  });

  it("refuses a kind of rating that is none", () => {
    expect(() => tiltFromRating(degrees(1), "stamp" as RatingKind, lie)).toThrow('"accepted":"squared-loft, tilt"');
  });
});
