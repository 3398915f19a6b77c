import fc from "fast-check";
import { quat, vec3 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { combined, dot, turnedAbout, type Vector } from "../../../core/head/vector.ts";
import { byLibrary } from "../../support/checkOf.ts";

const part = fc.double({ min: -1, max: 1, noNaN: true });
const someVector = fc.tuple(part, part, part).filter((v) => Math.hypot(...v) > 0.1) as fc.Arbitrary<Vector>;

describe(byLibrary(turnedAbout, "gl-matrix", "quaternions about any axis"), () => {
  it("turns a vector as a quaternion does", () => {
    fc.assert(
      fc.property(someVector, someVector, fc.double({ min: -3, max: 3, noNaN: true }), (raw, vector, angle) => {
        const axis = combined([1 / Math.sqrt(dot(raw, raw)), raw]);
        const wanted = vec3.transformQuat([0, 0, 0], [...vector], quat.setAxisAngle([0, 0, 0, 1], [...axis], angle));
        turnedAbout(axis, vector, angle).forEach((got, index) => {
          expect(got).toBeCloseTo(wanted[index] ?? Number.NaN, 12);
        });
      }),
    );
  });
});
