import fc from "fast-check";
import { glMatrix, quat, vec3 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { afterBend, type Bend, type BendableHead } from "../../../core/head/afterBend.ts";
import { degrees, millimetres } from "../../../core/quantity/units.ts";
import published from "../../../fixtures/published/bending.json" with { type: "json" };
import { byLaw, byLibrary, byTable } from "../../support/checkOf.ts";

/** Double precision: the library works in single precision otherwise. */
glMatrix.setMatrixArrayType(Array);

const rad = (deg: number) => (deg * Math.PI) / 180;
const deg = (radians: number) => (radians * 180) / Math.PI;

const head = (given: Partial<BendableHead> = {}): BendableHead => ({
  squaredLoftDeg: degrees(56),
  seatedLieDeg: degrees(64),
  bounceDeg: degrees(10),
  offsetMm: millimetres(3),
  bendPointHeightMm: millimetres(55),
  ...given,
});
const bend = (loft: number, lie = 0): Bend => ({ loftChangeDeg: degrees(loft), lieChangeDeg: degrees(lie) });
const bends = fc.record({
  loft: fc.double({ min: 0, max: 64, noNaN: true }),
  bounce: fc.double({ min: -5, max: 20, noNaN: true }),
  height: fc.double({ min: 20, max: 100, noNaN: true }),
  change: fc.double({ min: -5, max: 5, noNaN: true }),
  again: fc.double({ min: -5, max: 5, noNaN: true }),
  lie: fc.double({ min: -5, max: 5, noNaN: true }),
});

describe(byTable(afterBend, "bending", published), () => {
  it.each(published.rows)("takes $loftDeg/$bounceDeg by $loftChangeDeg° to $loftAfterDeg/$bounceAfterDeg", (row) => {
    const before = head({ squaredLoftDeg: degrees(row.loftDeg), bounceDeg: degrees(row.bounceDeg) });
    const after = afterBend(before, bend(row.loftChangeDeg));
    expect(Math.abs(after.squaredLoftDeg - row.loftAfterDeg)).toBeLessThan(published.tolerance.deg);
    expect(Math.abs(after.bounceDeg - row.bounceAfterDeg)).toBeLessThan(published.tolerance.deg);
    expect(after.seatedLieDeg).toBe(64);
  });

  it.each(published.offset)("changes the offset by $offsetChangeMm mm for $loftChangeDeg° bent $bendPointHeightMm mm up", (row) => {
    const after = afterBend(head({ bendPointHeightMm: millimetres(row.bendPointHeightMm) }), bend(row.loftChangeDeg));
    expect(Math.abs((after.offsetChangeMm ?? Number.NaN) - row.offsetChangeMm)).toBeLessThan(published.tolerance.offsetMm);
    expect(Math.abs((after.offsetMm ?? Number.NaN) - 3 - row.offsetChangeMm)).toBeLessThan(published.tolerance.offsetMm);
  });

  it.each(published.lift)("lifts the toe by $toeLiftMm mm for $lieChangeDeg° of lie", (row) => {
    expect(Math.abs(afterBend(head(), bend(0, row.lieChangeDeg)).toeLiftMm - row.toeLiftMm)).toBeLessThan(published.tolerance.liftMm);
  });
});

describe(byLibrary(afterBend, "gl-matrix", "face, sole and hosel rotated by quaternions"), () => {
  const rotated = (vector: vec3, axis: vec3, angleDeg: number): vec3 =>
    vec3.transformQuat(vec3.create(), vector, quat.setAxisAngle(quat.create(), axis, rad(angleDeg)));
  const [toTarget, toPlayer] = [vec3.fromValues(1, 0, 0), vec3.fromValues(0, 1, 0)];

  it("agrees in loft, bounce, lie, offset and lift", () => {
    fc.assert(
      fc.property(bends, ({ loft, bounce, height, change, lie }) => {
        const before = head({ squaredLoftDeg: degrees(loft), bounceDeg: degrees(bounce), bendPointHeightMm: millimetres(height) });
        const after = afterBend(before, bend(change, lie));
        const face = rotated(vec3.fromValues(Math.cos(rad(loft)), 0, Math.sin(rad(loft))), toPlayer, -change);
        expect(Math.abs(after.squaredLoftDeg - deg(Math.atan2(face[2] ?? 0, face[0] ?? 0)))).toBeLessThan(1e-9);
        const sole = rotated(vec3.fromValues(Math.cos(rad(bounce)), 0, Math.sin(rad(bounce))), toPlayer, -change);
        expect(Math.abs(after.bounceDeg - deg(Math.atan2(sole[2] ?? 0, sole[0] ?? 0)))).toBeLessThan(1e-9);
        const hosel = rotated(vec3.fromValues(0, Math.cos(rad(64)), Math.sin(rad(64))), toTarget, lie);
        expect(Math.abs(after.seatedLieDeg - deg(Math.atan2(hosel[2] ?? 0, hosel[1] ?? 0)))).toBeLessThan(1e-9);
        // A plumb line from the bend to the leading edge's height, turned with the head and drawn on to the same height.
        const plumb = rotated(vec3.fromValues(0, 0, -1), toPlayer, change);
        expect(Math.abs((after.offsetChangeMm ?? Number.NaN) - (height * (plumb[0] ?? 0)) / -(plumb[2] ?? 0))).toBeLessThan(1e-9);
        const toe = rotated(vec3.fromValues(0, -50, 0), toTarget, -lie);
        expect(Math.abs(after.toeLiftMm - (toe[2] ?? 0))).toBeLessThan(1e-9);
      }),
    );
  });
});

describe(byLaw(afterBend, "bending nothing changes nothing"), () => {
  it("leaves every reading", () => {
    expect(afterBend(head(), bend(0))).toEqual({
      squaredLoftDeg: 56,
      seatedLieDeg: 64,
      bounceDeg: 10,
      offsetChangeMm: 0,
      offsetMm: 3,
      toeLiftMm: 0,
    });
  });
});

describe(byLaw(afterBend, "two bends add up in loft, bounce and lie; loft less bounce stays"), () => {
  it("reads the same bent twice as bent once by the sum", () => {
    fc.assert(
      fc.property(bends, ({ loft, bounce, change, again, lie }) => {
        const before = head({ squaredLoftDeg: degrees(loft), bounceDeg: degrees(bounce) });
        const twice = afterBend(afterBend(before, bend(change, lie)), bend(again, -lie / 2));
        const once = afterBend(before, bend(change + again, lie / 2));
        expect(twice.squaredLoftDeg).toBeCloseTo(once.squaredLoftDeg, 9);
        expect(twice.bounceDeg).toBeCloseTo(once.bounceDeg, 9);
        expect(twice.seatedLieDeg).toBeCloseTo(once.seatedLieDeg, 9);
        expect(once.squaredLoftDeg - once.bounceDeg).toBeCloseTo(loft - bounce, 9);
      }),
    );
  });
});

describe("afterBend", () => {
  it("answers what bounce a 56 with 10 has as a 54", () => {
    expect(afterBend(head(), bend(-2))).toMatchObject({ squaredLoftDeg: 54, bounceDeg: 8 });
  });

  it("says nothing of the offset where the bend's height or the offset is not known", () => {
    const angles = { squaredLoftDeg: degrees(56), seatedLieDeg: degrees(64), bounceDeg: degrees(10) };
    expect(afterBend({ ...angles, offsetMm: millimetres(3) }, bend(1))).toMatchObject({ offsetChangeMm: null, offsetMm: null });
    const noOffset = afterBend({ ...angles, bendPointHeightMm: millimetres(55) }, bend(1));
    expect(noOffset.offsetMm).toBeNull();
    expect(noOffset.offsetChangeMm).toBeLessThan(0);
  });

  it.each([
    ["squaredLoftDeg", -15, 75],
    ["seatedLieDeg", 40, 85],
    ["bounceDeg", -10, 30],
    ["offsetMm", -50, 50],
    ["bendPointHeightMm", 0, 150],
  ])("takes a %s from %d to %d and refuses what is past it", (field, min, max) => {
    const of = (value: number) => () => afterBend({ ...head(), [field]: value }, bend(0));
    expect(of(min)).not.toThrow();
    expect(of(max)).not.toThrow();
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(of(wrong)).toThrow(`"field":"${field}"`);
    }
  });

  it.each(["loftChangeDeg", "lieChangeDeg"])("takes a %s of 10° either way and refuses more", (field) => {
    const of = (value: number) => () => afterBend(head(), { ...bend(0), [field]: value });
    expect(of(-10)).not.toThrow();
    expect(of(10)).not.toThrow();
    for (const wrong of [-10.001, 10.001, Number.NaN, Number.NEGATIVE_INFINITY]) {
      expect(of(wrong)).toThrow(`"field":"${field}"`);
    }
  });

  it.each([
    ["squaredLoftDeg", 74, 1, 0],
    ["squaredLoftDeg", -14, -1, 0],
    ["bounceDeg", 29, 1, 0],
    ["bounceDeg", -9, -1, 0],
    ["seatedLieDeg", 84, 0, 1],
    ["seatedLieDeg", 41, 0, -1],
  ])("takes a %s of %d bent to the edge of what a head can be, and refuses a bend past it", (field, from, loft, lie) => {
    expect(() => afterBend({ ...head(), [field]: from }, bend(loft, lie))).not.toThrow();
    expect(() => afterBend({ ...head(), [field]: from }, bend(loft * 1.001, lie * 1.001))).toThrow(`"field":"${field} after"`);
  });
});
