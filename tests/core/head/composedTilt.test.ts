import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { composedTilt } from "../../../core/head/composedTilt.ts";
import published from "../../../fixtures/published/twoPieceSleeves.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { composedByQuaternions } from "./byQuaternions.ts";
import { bareHead, between, someTilts, tilted } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const direction = ({ tiltDeg, clockDeg }: ReturnType<typeof composedTilt>) => {
  const [tilt, clock] = [(tiltDeg * Math.PI) / 180, (clockDeg * Math.PI) / 180];
  return [Math.sin(tilt) * Math.cos(clock), Math.sin(tilt) * Math.sin(clock), Math.cos(tilt)];
};

describe(byTable(composedTilt, "twoPieceSleeves", published), () => {
  it.each(published.rows)("leans as two tilts at $clocksDeg", ({ clocksDeg, ...wanted }) => {
    const got = attitudeOf(bareHead(published.head), composedTilt(clocksDeg.map((clockDeg) => tilted(published.tiltDeg, clockDeg))));
    expect(Math.abs(got.seatedLieDeg - wanted.seatedLieDeg)).toBeLessThan(published.tolerance);
    expect(Math.abs(got.soledFaceDeg - wanted.soledFaceDeg)).toBeLessThan(published.tolerance);
    expect(Math.abs(got.squaredLoftAtDesignLieDeg - wanted.squaredLoftAtDesignLieDeg)).toBeLessThan(published.tolerance);
  });
});

describe(byLibrary(composedTilt, "gl-matrix", "the product of the pieces' quaternions"), () => {
  it("agrees to 1e-12 for one piece to four", () => {
    fc.assert(
      fc.property(fc.array(someTilts, { minLength: 1, maxLength: 4 }), (pieces) => {
        expect(direction(composedTilt(pieces))).toEqual([...composedByQuaternions(pieces)].map((part) => expect.closeTo(part, 12)));
      }),
    );
  });
});

describe(byLaw(composedTilt, "opposite pieces cancel, pieces of one clock add, one piece alone stays"), () => {
  it("cancels opposite tilts", () => {
    fc.assert(
      fc.property(someTilts, ({ tiltDeg, clockDeg }) => {
        expect(composedTilt([tilted(tiltDeg, clockDeg), tilted(tiltDeg, clockDeg - 180)])).toEqual({ tiltDeg: 0, clockDeg: 0 });
      }),
    );
  });

  it("adds tilts to the same clock", () => {
    fc.assert(
      fc.property(someTilts, between(0.25, 4), ({ tiltDeg, clockDeg }, moreDeg) => {
        const got = composedTilt([tilted(tiltDeg, clockDeg), tilted(moreDeg, clockDeg)]);
        expect(got.tiltDeg).toBeCloseTo(tiltDeg + moreDeg, 9);
        expect(Math.cos(((got.clockDeg - clockDeg) * Math.PI) / 180)).toBeCloseTo(1, 9);
      }),
    );
  });

  it("leaves one piece as it is, its clock from 0 to below 360", () => {
    const got = composedTilt([tilted(1.5, -90)]);
    expect(got.tiltDeg).toBeCloseTo(1.5, 12);
    expect(got.clockDeg).toBeCloseTo(270, 9);
  });
});

describe("composedTilt", () => {
  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([[tilted(0.75, 45), tilted(0.75, 315)]] as const)) {
      expect(() => composedTilt(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it("takes one piece to four", () => {
    const pieces = (count: number) => Array.from({ length: count }, () => tilted(0.5, 90));
    expect(composedTilt(pieces(1)).tiltDeg).toBeCloseTo(0.5, 9);
    expect(composedTilt(pieces(4)).tiltDeg).toBeCloseTo(2, 9);
    expect(() => composedTilt(pieces(0))).toThrow("list-of-wrong-size");
    expect(() => composedTilt(pieces(5))).toThrow("list-of-wrong-size");
  });
});
