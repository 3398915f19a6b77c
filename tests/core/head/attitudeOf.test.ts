import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attitudeFrom, readings } from "../../../core/head/attitude.ts";
import { attitudeOf, bondedAttitude } from "../../../core/head/attitudeOf.ts";
import type { Hand } from "../../../core/kinds.ts";
import published from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import sensitivity from "../../../fixtures/published/sleeveSensitivity.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { attitudeByQuaternions } from "./byQuaternions.ts";
import { bareHead, between, someHeads, someTilts, tilted } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const head = bareHead(published.head);

describe(byTable(attitudeOf, "sleeveGeometry", published), () => {
  it.each(published.rows)("with $tiltDeg° at $clockDeg on the clock", ({ tiltDeg, clockDeg, ...wanted }) => {
    const got = attitudeOf(head, tilted(tiltDeg, clockDeg));
    for (const reading of readings) {
      expect(Math.abs(got[reading] - wanted[reading]), reading).toBeLessThan(published.tolerance);
    }
  });
});

describe(byTable(bondedAttitude, "sleeveGeometry", published), () => {
  it.each(published.faceSquared)("squares a face 2° open at lie $designLieDeg to $squaredLoftDeg°", ({ designLieDeg, squaredLoftDeg }) => {
    const got = bondedAttitude(bareHead({ ...published.faceSquaredHead, designLieDeg }));
    expect(Math.abs(got.squaredLoftDeg - squaredLoftDeg)).toBeLessThan(published.tolerance);
    expect(Math.abs(got.squaredLoftAtDesignLieDeg - squaredLoftDeg)).toBeLessThan(published.tolerance);
  });
});

describe(byTable(attitudeOf, "sleeveSensitivity", sensitivity), () => {
  const tiltDeg = 0.01;
  /** By how much a reading grows per degree of tilt, from one place on the clock to the opposite. */
  const slope = (reading: (typeof readings)[number], designLieDeg: number, clockDeg: number, soledLoftDeg = 10) => {
    const at = (place: number) => attitudeOf(bareHead({ soledLoftDeg, soledFaceDeg: 0, designLieDeg }), tilted(tiltDeg, place))[reading];
    return (at(clockDeg) - at(clockDeg + 180)) / (2 * tiltDeg);
  };

  it.each(sensitivity.rows)("gains $loftPerTilt° of loft a degree at lie $designLieDeg", ({ designLieDeg, ...wanted }) => {
    const [loft, face] = [slope("squaredLoftDeg", designLieDeg, 0), slope("soledFaceDeg", designLieDeg, 0)];
    expect(Math.abs(loft - wanted.loftPerTilt)).toBeLessThan(sensitivity.tolerance);
    expect(Math.abs(-face - wanted.faceClosedPerTilt)).toBeLessThan(sensitivity.tolerance);
    expect(Math.abs(-face / loft - wanted.facePerLoft)).toBeLessThan(sensitivity.tolerance);
  });

  it("gains a tenth of the upright lean as loft at the design lie, none at the seated lie", () => {
    const { designLieDeg, soledLoftDeg, loftAtDesignLiePerTilt, tolerance } = sensitivity.upright;
    expect(Math.abs(slope("squaredLoftAtDesignLieDeg", designLieDeg, 90, soledLoftDeg) - loftAtDesignLiePerTilt)).toBeLessThan(tolerance);
    expect(slope("squaredLoftDeg", designLieDeg, 90, soledLoftDeg)).toBeCloseTo(0, 9);
  });
});

describe(byLibrary(attitudeOf, "gl-matrix", "tilt, yaw and roll in the world by quaternions, the roll found by bisection"), () => {
  it("agrees to 1e-9° in either hand", () => {
    fc.assert(
      fc.property(someHeads, someTilts, (someHead, tilt) => {
        const [got, wanted] = [attitudeOf(someHead, tilt), attitudeByQuaternions(someHead, tilt)];
        for (const reading of readings) {
          expect(Math.abs(got[reading] - wanted[reading]), reading).toBeLessThan(1e-9);
        }
      }),
    );
  });
});

describe(byLaw(attitudeOf, "mirrored hands mirror"), () => {
  it("reads a left head at a mark as a right head at the mark across", () => {
    fc.assert(
      fc.property(someHeads, someTilts, (someHead, { tiltDeg, clockDeg }) => {
        const left = attitudeOf({ ...someHead, hand: "left" }, tilted(tiltDeg, clockDeg));
        const right = attitudeOf({ ...someHead, hand: "right" }, tilted(tiltDeg, -clockDeg));
        expect(left).toEqual(attitudeFrom((reading) => expect.closeTo(right[reading], 9)));
      }),
    );
  });
});

describe(byLaw(attitudeOf, "no tilt changes nothing, and a full turn of the clock comes back"), () => {
  it("reads the bare head at zero tilt wherever the clock stands", () => {
    fc.assert(
      fc.property(someHeads, between(-360, 360), (someHead, clockDeg) => {
        const got = attitudeOf(someHead, tilted(0, clockDeg));
        expect(got.seatedLieDeg).toBeCloseTo(someHead.designLieDeg, 9);
        expect(got.soledFaceDeg).toBeCloseTo(someHead.soledFaceDeg, 9);
        expect(got).toEqual(attitudeFrom((reading) => expect.closeTo(bondedAttitude(someHead)[reading], 9)));
      }),
    );
  });

  it("reads the soled loft as squared loft when the face is square", () => {
    fc.assert(
      fc.property(someHeads, ({ soledLoftDeg, designLieDeg }) => {
        expect(bondedAttitude(bareHead({ soledLoftDeg, soledFaceDeg: 0, designLieDeg })).squaredLoftDeg).toBeCloseTo(soledLoftDeg, 9);
      }),
    );
  });

  it("reads the same a full turn on", () => {
    fc.assert(
      fc.property(someHeads, someTilts, (someHead, { tiltDeg, clockDeg }) => {
        const [here, around] = [attitudeOf(someHead, tilted(tiltDeg, clockDeg)), attitudeOf(someHead, tilted(tiltDeg, clockDeg - 360))];
        expect(around).toEqual(attitudeFrom((reading) => expect.closeTo(here[reading], 9)));
      }),
    );
  });
});

describe("attitudeOf", () => {
  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([head, tilted(1, 45)] as const)) {
      expect(() => attitudeOf(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it("refuses a hand that is none", () => {
    expect(() => attitudeOf({ ...head, hand: "both" as Hand }, tilted(1, 0))).toThrow("quantity-unreadable");
  });

  it.each([
    ["soledLoftDeg", -15, 75],
    ["soledFaceDeg", -20, 20],
    ["designLieDeg", 40, 85],
  ] as const)("takes a %s from %d to %d and nothing past that", (field, min, max) => {
    const read = (value: number) => attitudeOf(bareHead({ ...published.head, [field]: value }), tilted(0, 0));
    expect(read(min).seatedLieDeg).toBeGreaterThan(0);
    expect(read(max).seatedLieDeg).toBeGreaterThan(0);
    expect(() => read(min - 0.001)).toThrow(`"field":"${field}"`);
    expect(() => read(max + 0.001)).toThrow(`"field":"${field}"`);
  });

  it.each([
    ["tiltDeg", 0, 5],
    ["clockDeg", -360, 360],
  ] as const)("takes a %s from %d to %d and nothing past that", (field, min, max) => {
    const read = (value: number) => attitudeOf(head, { ...tilted(1, 1), [field]: value });
    expect(read(min).seatedLieDeg).toBeGreaterThan(0);
    expect(read(max).seatedLieDeg).toBeGreaterThan(0);
    expect(() => read(min - 0.001)).toThrow(`"field":"${field}"`);
    expect(() => read(max + 0.001)).toThrow(`"field":"${field}"`);
  });

  it("refuses a face that no roll can square", () => {
    expect(() => attitudeOf(bareHead({ soledLoftDeg: 75, soledFaceDeg: -20, designLieDeg: 40 }), tilted(5, 0))).toThrow(
      '"field":"sine of the squared loft"',
    );
  });
});
