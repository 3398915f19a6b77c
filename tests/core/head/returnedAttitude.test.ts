import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { returnedAttitude } from "../../../core/head/returnedAttitude.ts";
import sensitivity from "../../../fixtures/published/sleeveSensitivity.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { loftAndFace, returnedByQuaternions } from "./byQuaternions.ts";
import { bareHead, someHeads, someTilts, tilted } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const head = bareHead({ soledLoftDeg: 9, soledFaceDeg: 0, designLieDeg: sensitivity.returned.designLieDeg });

describe(byLibrary(returnedAttitude, "gl-matrix", "the shaft taken back about what is square to it and the axis, by a quaternion"), () => {
  it("agrees to 1e-9° in either hand", () => {
    fc.assert(
      fc.property(someHeads, someTilts, (someHead, tilt) => {
        const got = returnedAttitude(someHead, tilt);
        const wanted = loftAndFace(returnedByQuaternions(someHead, tilt), someHead.hand);
        expect(Math.abs(got.returnedLoftDeg - wanted.loftDeg)).toBeLessThan(1e-9);
        expect(Math.abs(got.returnedFaceDeg - wanted.faceDeg)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe(byTable(returnedAttitude, "sleeveSensitivity", sensitivity), () => {
  it("gains sin L of loft and closes cos L of face per degree of a small tilt to the target", () => {
    const [more, less] = [returnedAttitude(head, tilted(0.01, 0)), returnedAttitude(head, tilted(0.01, 180))];
    const { loftPerTilt, faceClosedPerTilt } = sensitivity.returned;
    expect(Math.abs((more.returnedLoftDeg - less.returnedLoftDeg) / 0.02 - loftPerTilt)).toBeLessThan(sensitivity.tolerance);
    expect(Math.abs((less.returnedFaceDeg - more.returnedFaceDeg) / 0.02 - faceClosedPerTilt)).toBeLessThan(sensitivity.tolerance);
  });
});

describe(byLaw(returnedAttitude, "the same club: rolled square from here it has the squared loft at the design lie"), () => {
  it("squares to the loft that attitudeOf gives", () => {
    fc.assert(
      fc.property(someHeads, someTilts, (someHead, tilt) => {
        const { returnedLoftDeg, returnedFaceDeg } = returnedAttitude(someHead, tilt);
        const atDesignLie = { ...someHead, soledLoftDeg: returnedLoftDeg, soledFaceDeg: returnedFaceDeg };
        const squared = attitudeOf(atDesignLie, tilted(0, 0)).squaredLoftDeg;
        expect(squared).toBeCloseTo(attitudeOf(someHead, tilt).squaredLoftAtDesignLieDeg, 9);
      }),
    );
  });

  it("stays as it was without tilt", () => {
    fc.assert(
      fc.property(someHeads, (someHead) => {
        const got = returnedAttitude(someHead, tilted(0, 77));
        expect(got.returnedLoftDeg).toBeCloseTo(someHead.soledLoftDeg, 9);
        expect(got.returnedFaceDeg).toBeCloseTo(someHead.soledFaceDeg, 9);
      }),
    );
  });
});

describe("returnedAttitude", () => {
  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([head, tilted(1, 45)] as const)) {
      expect(() => returnedAttitude(...args), where).toThrow("quantity-out-of-range");
    }
  });
});
