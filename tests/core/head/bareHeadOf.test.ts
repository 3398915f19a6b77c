import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { bareHeadOf } from "../../../core/head/bareHeadOf.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { byLaw } from "../../support/checkOf.ts";
import { bareHead, someHeads, someTilts, tilted } from "./someAngles.ts";

describe(byLaw(bareHeadOf, "it takes attitudeOf back"), () => {
  it.each([
    [9, 0.5, 58, 1.5, 270, "right"],
    [10.5, -1.2, 56.3, 2, 45, "left"],
    [15, 2, 60, 4, 180, "right"],
  ] as const)("finds the head that reads so: loft %d, face %d, lie %d, tilt %d at %d, %s", (loft, face, lie, tilt, clock, hand) => {
    const head = bareHead({ soledLoftDeg: loft, soledFaceDeg: face, designLieDeg: lie }, hand);
    const found = bareHeadOf(attitudeOf(head, tilted(tilt, clock)), tilted(tilt, clock), hand);
    expect(found.soledLoftDeg).toBeCloseTo(loft, 9);
    expect(found.soledFaceDeg).toBeCloseTo(face, 9);
    expect(found.designLieDeg).toBeCloseTo(lie, 9);
  });

  it("for any head, tilt and hand", () => {
    fc.assert(
      fc.property(someHeads, someTilts, (head, tilt) => {
        const found = bareHeadOf(attitudeOf(head, tilt), tilt, head.hand);
        expect(found.soledLoftDeg).toBeCloseTo(head.soledLoftDeg, 8);
        expect(found.soledFaceDeg).toBeCloseTo(head.soledFaceDeg, 8);
        expect(found.designLieDeg).toBeCloseTo(head.designLieDeg, 8);
      }),
    );
  });
});

describe("bareHeadOf", () => {
  const reads = { squaredLoftDeg: degrees(9), soledFaceDeg: degrees(0), seatedLieDeg: degrees(58) };

  it.each([{ squaredLoftDeg: degrees(80) }, { soledFaceDeg: degrees(-25) }, { seatedLieDeg: degrees(30) }])("refuses %o", (wrong) => {
    expect(() => bareHeadOf({ ...reads, ...wrong }, tilted(1, 270), "right")).toThrow(
      expect.objectContaining({ code: "quantity-out-of-range", facts: expect.objectContaining({ field: Object.keys(wrong)[0] }) }),
    );
  });
});
