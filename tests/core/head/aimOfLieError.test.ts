import fc from "fast-check";
import { glMatrix, quat, vec3 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { aimOfLieError } from "../../../core/head/aimOfLieError.ts";
import { sidewaysAt } from "../../../core/head/sidewaysAt.ts";
import type { Hand } from "../../../core/kinds.ts";
import { degrees, MM_PER_INCH, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/lieError.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";

/** Double precision: the library works in single precision otherwise. */
glMatrix.setMatrixArrayType(Array);

const { tolerance } = published;
const MM_PER_FOOT = 12 * MM_PER_INCH;
const MM_PER_YARD = 3 * MM_PER_FOOT;
const rad = (deg: number) => (deg * Math.PI) / 180;
const deg = (radians: number) => (radians * 180) / Math.PI;
const aim = (loft: number, error: number, hand: Hand = "right") => aimOfLieError(degrees(loft), degrees(error), hand);
const lofts = fc.double({ min: 1, max: 70, noNaN: true });
const errors = fc.double({ min: -30, max: 30, noNaN: true });

describe(byTable(aimOfLieError, "lieError", published), () => {
  it.each(published.rows)("aims $aimLeftDeg° left with $loftDeg° of loft $lieErrorDeg° upright", ({ loftDeg, lieErrorDeg, aimLeftDeg }) => {
    expect(Math.abs(aim(loftDeg, lieErrorDeg).aimLeftDeg - aimLeftDeg)).toBeLessThan(tolerance.deg);
  });

  it.each(published.playedLoft)("plays $loftDeg° as $playedLoftDeg°, $lieErrorDeg° upright", ({ loftDeg, lieErrorDeg, playedLoftDeg }) => {
    expect(Math.abs(aim(loftDeg, lieErrorDeg).playedLoftDeg - playedLoftDeg)).toBeLessThan(tolerance.deg);
  });

  it("agrees with the published wedge", () => {
    const { loftDeg, lieErrorDeg, aimLeftDeg } = published.published;
    expect(Math.abs(aim(loftDeg, lieErrorDeg).aimLeftDeg - aimLeftDeg)).toBeLessThan(tolerance.publishedDeg);
  });

  it.each(published.atRightAngle)("aims its whole loft of %d° aside when it lies on its toe, and has none left", (loftDeg) => {
    expect(aim(loftDeg, 90).aimLeftDeg).toBeCloseTo(loftDeg, 9);
    expect(aim(loftDeg, -90).aimLeftDeg).toBeCloseTo(-loftDeg, 9);
    expect(aim(loftDeg, 90).playedLoftDeg).toBeCloseTo(0, 9);
  });
});

describe(byLibrary(aimOfLieError, "gl-matrix", "the face's normal rotated about the target line by a quaternion"), () => {
  it("agrees in direction and loft", () => {
    fc.assert(
      fc.property(lofts, errors, (loft, error) => {
        const normal = vec3.fromValues(Math.cos(rad(loft)), 0, Math.sin(rad(loft)));
        // x to the target, y to the player, z up: upright turns the top of the face away from the player, to the left.
        const turned = vec3.transformQuat(vec3.create(), normal, quat.setAxisAngle(quat.create(), [1, 0, 0], rad(error)));
        expect(Math.abs(aim(loft, error).aimLeftDeg - deg(Math.atan2(-(turned[1] ?? 0), turned[0] ?? 0)))).toBeLessThan(1e-9);
        expect(Math.abs(aim(loft, error).playedLoftDeg - deg(Math.asin(turned[2] ?? 0)))).toBeLessThan(1e-9);
      }),
    );
  });
});

describe(byLaw(aimOfLieError, "odd in the error, mirrored by the hand, nothing without an error or without loft"), () => {
  it("turns its sign with the error and with the hand", () => {
    fc.assert(
      fc.property(lofts, errors, (loft, error) => {
        const upright = aim(loft, error);
        for (const other of [aim(loft, -error), aim(loft, error, "left")]) {
          expect(other.aimLeftDeg + upright.aimLeftDeg).toBeCloseTo(0, 12);
          expect(other.playedLoftDeg).toBeCloseTo(upright.playedLoftDeg, 12);
        }
      }),
    );
  });

  it("aims at the target", () => {
    expect(aim(46, 0)).toEqual({ aimLeftDeg: 0, playedLoftDeg: expect.closeTo(46, 12), note: "face-normal-not-ball-start" });
    expect(aim(46, 0, "left").aimLeftDeg).toBe(0);
    expect(aim(0, 5).aimLeftDeg).toBe(0);
  });
});

describe("aimOfLieError", () => {
  it("looks left when upright with a right-handed club, right with a left-handed one", () => {
    expect(aim(46, 4, "right").aimLeftDeg).toBeGreaterThan(0);
    expect(aim(46, 4, "left").aimLeftDeg).toBeLessThan(0);
  });

  it.each([
    ["squaredLoftDeg", -15, 75, (value: number) => aim(value, 1)],
    ["lieErrorDeg", -90, 90, (value: number) => aim(46, value)],
  ] as const)("takes a %s from %d to %d and refuses what is past it", (field, min, max, of) => {
    expect(() => of(min)).not.toThrow();
    expect(() => of(max)).not.toThrow();
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN]) {
      expect(() => of(wrong)).toThrow(`"field":"${field}"`);
    }
  });

  it("refuses a hand that is neither", () => {
    expect(() => aim(46, 1, "both" as Hand)).toThrow("quantity-unreadable");
  });
});

describe(byTable(sidewaysAt, "lieError", published), () => {
  it("agrees with the published wedge", () => {
    const { loftDeg, lieErrorDeg, distanceYd, sidewaysFt } = published.published;
    const sidewaysMm = sidewaysAt(millimetres(distanceYd * MM_PER_YARD), aim(loftDeg, lieErrorDeg).aimLeftDeg);
    expect(Math.abs(sidewaysMm / MM_PER_FOOT - sidewaysFt)).toBeLessThan(tolerance.publishedFt);
  });

  it.each(published.yardsPerDegree)(
    "is $sidewaysYd yd for a degree of lie at $loftDeg° and $distanceYd yd",
    ({ loftDeg, distanceYd, sidewaysYd }) => {
      const sidewaysMm = sidewaysAt(millimetres(distanceYd * MM_PER_YARD), aim(loftDeg, 1).aimLeftDeg);
      expect(Math.abs(sidewaysMm / MM_PER_YARD - sidewaysYd)).toBeLessThan(tolerance.yardsPerDegree);
    },
  );
});

describe(byLibrary(sidewaysAt, "gl-matrix", "a line of sight rotated by a quaternion and drawn on to the distance"), () => {
  it("agrees, left and right", () => {
    fc.assert(
      fc.property(errors, fc.double({ min: 0, max: 300_000, noNaN: true }), (azimuth, distanceMm) => {
        const sight = vec3.transformQuat(vec3.create(), [1, 0, 0], quat.setAxisAngle(quat.create(), [0, 0, 1], rad(azimuth)));
        const wantedMm = (distanceMm * (sight[1] ?? 0)) / (sight[0] ?? 0);
        const gotMm = sidewaysAt(millimetres(distanceMm), degrees(azimuth));
        expect(Math.abs(gotMm - wantedMm)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wantedMm)));
      }),
    );
  });
});

describe("sidewaysAt", () => {
  it.each([
    ["distanceMm", 0, 500_000, (value: number) => sidewaysAt(millimetres(value), degrees(1))],
    ["aimLeftDeg", -85, 85, (value: number) => sidewaysAt(millimetres(1000), degrees(value))],
  ] as const)("takes a %s from %d to %d and refuses what is past it", (field, min, max, of) => {
    expect(() => of(min)).not.toThrow();
    expect(() => of(max)).not.toThrow();
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN]) {
      expect(() => of(wrong)).toThrow(`"field":"${field}"`);
    }
  });
});
