import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gripShaftDiameter } from "../../../core/club/gripShaftDiameter.ts";
import { millimetres } from "../../../core/quantity/units.ts";
import { byLaw } from "../../support/checkOf.ts";

const butt = { diameterMm: millimetres(15.24), parallelMm: millimetres(50), taperPer100Mm: millimetres(0.4) };
const cap = millimetres(3);
const at = (fromCapMm: number) => gripShaftDiameter(butt, millimetres(fromCapMm), cap);

describe(byLaw(gripShaftDiameter, "equal steps down a straight taper lose equal diameters"), () => {
  it("holds below the parallel part, and nothing is lost on it", () => {
    fc.assert(
      fc.property(fc.double({ min: 53, max: 200, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }), (from, step) => {
        expect(at(from) - at(from + step)).toBeCloseTo(at(from + step) - at(from + 2 * step), 9);
        expect(at(3 + step)).toBe(15.24);
      }),
    );
  });
});

describe("gripShaftDiameter", () => {
  it("loses 0.4 mm a hundred millimetres past the parallel part under the cap", () => {
    expect(at(53)).toBe(15.24);
    expect(at(153)).toBeCloseTo(14.84, 9);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1])("refuses %d in every place", (value) => {
    const number = millimetres(value);
    for (const field of ["diameterMm", "parallelMm", "taperPer100Mm"]) {
      expect(() => gripShaftDiameter({ ...butt, [field]: number }, millimetres(50), cap)).toThrow("quantity-out-of-range");
    }
    expect(() => gripShaftDiameter(butt, number, cap)).toThrow("fromCapMm");
    expect(() => gripShaftDiameter(butt, millimetres(50), number)).toThrow("capMm");
  });

  it("refuses a place in the cap, and a taper that runs out of shaft", () => {
    expect(at(3)).toBe(15.24);
    expect(() => at(2.9)).toThrow("fromCapMm");
    expect(() => gripShaftDiameter({ ...butt, taperPer100Mm: millimetres(10) }, millimetres(200), cap)).toThrow("shaftDiameterMm");
  });
});
