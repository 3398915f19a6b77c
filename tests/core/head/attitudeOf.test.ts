import fc from "fast-check";
import { glMatrix, quat, vec3 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import published from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };

fc.configureGlobal({ seed: 20270503 });

/** Double precision: the library works in single precision otherwise. */
glMatrix.setMatrixArrayType(Array);

const rad = (deg: number) => (deg * Math.PI) / 180;
const deg = (radians: number) => (radians * 180) / Math.PI;

const rotated = (vector: vec3, axis: vec3, angleRad: number): vec3 =>
  vec3.transformQuat(vec3.create(), vector, quat.setAxisAngle(quat.create(), axis, angleRad));

/** The squared loft found by rolling the posed head about its shaft until the face looks at the target. */
function loftAfterRolling(normal: vec3, shaft: vec3): number {
  const sideways = (roll: number) => rotated(normal, shaft, roll)[1] ?? 0;
  const step = (low: number, high: number, left: number): number => {
    const middle = (low + high) / 2;
    if (left === 0) {
      return middle;
    }
    return sideways(low) * sideways(middle) <= 0 ? step(low, middle, left - 1) : step(middle, high, left - 1);
  };
  const roll = step(-0.6, 0.6, 60);
  return deg(Math.asin(rotated(normal, shaft, roll)[2] ?? 0));
}

/** Everything by quaternions: tilt the bore about the axes of the soled head, yaw, then roll. */
function byQuaternions(loft: number, face: number, lie: number, tilt: number, clock: number) {
  const bore = vec3.fromValues(0, Math.cos(rad(lie)), Math.sin(rad(lie)));
  const upright = vec3.fromValues(0, -Math.sin(rad(lie)), Math.cos(rad(lie)));
  const lean = vec3.scaleAndAdd(vec3.create(), vec3.fromValues(Math.cos(rad(clock)), 0, 0), upright, Math.sin(rad(clock)));
  const shaft = rotated(bore, vec3.normalize(vec3.create(), vec3.cross(vec3.create(), bore, lean)), rad(tilt));
  const normal = vec3.fromValues(Math.cos(rad(loft)) * Math.cos(rad(face)), -Math.cos(rad(loft)) * Math.sin(rad(face)), Math.sin(rad(loft)));
  const yaw = Math.atan2(shaft[0] ?? 0, shaft[1] ?? 0);
  const vertical = vec3.fromValues(0, 0, 1);
  const [standing, facing] = [rotated(shaft, vertical, yaw), rotated(normal, vertical, yaw)];
  return {
    squaredLoftDeg: loftAfterRolling(facing, standing),
    soledFaceDeg: deg(Math.atan2(-(facing[1] ?? 0), facing[0] ?? 0)),
    seatedLieDeg: deg(Math.asin(standing[2] ?? 0)),
  };
}

describe(`attitudeOf (${published.source})`, () => {
  it.each(published.rows)("with $tiltDeg° at $clockDeg on the clock", ({ tiltDeg, clockDeg, ...wanted }) => {
    const got = attitudeOf({ ...published.head, hand: "right" }, { tiltDeg, clockDeg });
    expect(Math.abs(got.squaredLoftDeg - wanted.squaredLoftDeg)).toBeLessThan(published.tolerance);
    expect(Math.abs(got.soledFaceDeg - wanted.soledFaceDeg)).toBeLessThan(published.tolerance);
    expect(Math.abs(got.seatedLieDeg - wanted.seatedLieDeg)).toBeLessThan(published.tolerance);
  });

  it.each(published.faceSquared)("squares a face 2° open at lie $designLieDeg to $squaredLoftDeg°", ({ designLieDeg, squaredLoftDeg }) => {
    const got = attitudeOf({ ...published.faceSquaredHead, designLieDeg, hand: "right" }, { tiltDeg: 0, clockDeg: 0 });
    expect(Math.abs(got.squaredLoftDeg - squaredLoftDeg)).toBeLessThan(published.tolerance);
  });
});

describe("attitudeOf", () => {
  const angles = fc.record({
    loft: fc.double({ min: 5, max: 30, noNaN: true }),
    face: fc.double({ min: -3, max: 3, noNaN: true }),
    lie: fc.double({ min: 54, max: 64, noNaN: true }),
    tilt: fc.double({ min: 0.25, max: 4, noNaN: true }),
    clock: fc.double({ min: 0, max: 360, noNaN: true }),
  });

  it("agrees with quaternions and a roll found by bisection", () => {
    fc.assert(
      fc.property(angles, ({ loft, face, lie, tilt, clock }) => {
        const head = { soledLoftDeg: loft, soledFaceDeg: face, designLieDeg: lie, hand: "right" as const };
        const [got, wanted] = [attitudeOf(head, { tiltDeg: tilt, clockDeg: clock }), byQuaternions(loft, face, lie, tilt, clock)];
        expect(Math.abs(got.seatedLieDeg - wanted.seatedLieDeg)).toBeLessThan(1e-9);
        expect(Math.abs(got.soledFaceDeg - wanted.soledFaceDeg)).toBeLessThan(1e-9);
        expect(Math.abs(got.squaredLoftDeg - wanted.squaredLoftDeg)).toBeLessThan(1e-9);
      }),
    );
  });

  it("mirrors the clock for the left hand", () => {
    fc.assert(
      fc.property(angles, ({ loft, face, lie, tilt, clock }) => {
        const head = { soledLoftDeg: loft, soledFaceDeg: face, designLieDeg: lie };
        const left = attitudeOf({ ...head, hand: "left" }, { tiltDeg: tilt, clockDeg: clock });
        const right = attitudeOf({ ...head, hand: "right" }, { tiltDeg: tilt, clockDeg: 360 - clock });
        expect(left.squaredLoftDeg).toBeCloseTo(right.squaredLoftDeg, 9);
        expect(left.soledFaceDeg).toBeCloseTo(right.soledFaceDeg, 9);
        expect(left.seatedLieDeg).toBeCloseTo(right.seatedLieDeg, 9);
      }),
    );
  });

  it("makes a mark upright in the right hand flat in the left", () => {
    const head = { soledLoftDeg: 9, soledFaceDeg: 0, designLieDeg: 58 };
    expect(attitudeOf({ ...head, hand: "right" }, { tiltDeg: 1, clockDeg: 90 }).seatedLieDeg).toBeCloseTo(59, 9);
    expect(attitudeOf({ ...head, hand: "left" }, { tiltDeg: 1, clockDeg: 90 }).seatedLieDeg).toBeCloseTo(57, 9);
  });

  it.each([
    ["a loft that is no number", { soledLoftDeg: Number.NaN }],
    ["a lie of 20°", { designLieDeg: 20 }],
    ["an infinite face", { soledFaceDeg: Number.POSITIVE_INFINITY }],
  ])("refuses %s", (_, wrong) => {
    const head = { soledLoftDeg: 9, soledFaceDeg: 0, designLieDeg: 58, hand: "right" as const, ...wrong };
    expect(() => attitudeOf(head, { tiltDeg: 1, clockDeg: 0 })).toThrow("quantity-out-of-range");
  });
});
