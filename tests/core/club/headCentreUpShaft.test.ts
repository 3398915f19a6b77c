import fc from "fast-check";
import { vec2 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { headCentreUpShaft } from "../../../core/club/headCentreUpShaft.ts";
import { degrees, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/headCentreUpShaft.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "./refusals.ts";

const upShaft = (heightMm: number, fromAxisMm: number, lieDeg: number) =>
  headCentreUpShaft(millimetres(heightMm), millimetres(fromAxisMm), degrees(lieDeg));
const someHead = [
  fc.double({ min: 10, max: 50, noNaN: true }),
  fc.double({ min: 0, max: 60, noNaN: true }),
  fc.double({ min: 50, max: 80, noNaN: true }),
] as const;

describe(byTable(headCentreUpShaft, "headCentreUpShaft", published), () => {
  it.each(published.rows)("is $upShaftMm mm at lie $lieDeg", (row) => {
    expect(Math.abs(upShaft(row.heightMm, row.fromAxisMm, row.lieDeg) - row.upShaftMm)).toBeLessThan(published.tolerance);
  });
});

describe(byLibrary(headCentreUpShaft, "gl-matrix", "the centre built along the shaft and square to it, then turned to its lie"), () => {
  it("stands at its height, on the toe's side", () => {
    fc.assert(
      fc.property(...someHead, (heightMm, fromAxisMm, lieDeg) => {
        const along = upShaft(heightMm, fromAxisMm, lieDeg);
        const turned = vec2.rotate([0, 0] as unknown as vec2, [along, fromAxisMm], [0, 0], (lieDeg * Math.PI) / 180);
        expect(turned[1]).toBeCloseTo(heightMm, 9);
      }),
    );
  });
});

describe(byLaw(headCentreUpShaft, "a shaft straight up, or a centre on the axis"), () => {
  it("is the height itself on an upright shaft, and the height along the slope on the axis", () => {
    fc.assert(
      fc.property(...someHead, (heightMm, fromAxisMm, lieDeg) => {
        expect(upShaft(heightMm, fromAxisMm, 90)).toBeCloseTo(heightMm, 9);
        expect(upShaft(heightMm, 0, lieDeg) * Math.sin((lieDeg * Math.PI) / 180)).toBeCloseTo(heightMm, 9);
      }),
    );
  });
});

describe("headCentreUpShaft", () => {
  it("refuses what no head has", () => {
    refusedOutside((mm) => upShaft(mm, 40, 58), 0, 150);
    refusedOutside((mm) => upShaft(32, mm, 58), 0, 200);
    refusedOutside((deg) => upShaft(32, 40, deg), 40, 90);
  });
});
