import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { combinedGaugeError } from "../../../core/bag/combinedGaugeError.ts";
import published from "../../../fixtures/published/gaugeError.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

describe(byTable(combinedGaugeError, "gaugeError", published), () => {
  it.each(published.rows)("makes $combinedDeg of $readings readings to $errorDeg", ({ errorDeg, readings, combinedDeg }) => {
    expect(Math.abs(combinedGaugeError(errorDeg, readings as 2) - combinedDeg)).toBeLessThan(published.tolerance);
  });
});

describe(byLaw(combinedGaugeError, "squares of errors add; one reading has its own error"), () => {
  it("adds in squares", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (error) => {
        expect(combinedGaugeError(error, 1)).toBe(error);
        expect(combinedGaugeError(error, 2)).toBeCloseTo(Math.hypot(error, error), 9);
      }),
    );
  });
});

describe("combinedGaugeError", () => {
  it("takes an error from 0 to 1000 and refuses what is past it", () => {
    expect(combinedGaugeError(0, 2)).toBe(0);
    expect(() => combinedGaugeError(1000, 1)).not.toThrow();
    for (const wrong of [-0.001, 1000.001, Number.NaN]) {
      expect(() => combinedGaugeError(wrong, 1)).toThrow('"field":"gaugeError"');
    }
  });

  it.each([0, 3, 1.5, Number.NaN])("refuses %d readings", (readings) => {
    expect(() => combinedGaugeError(0.1, readings as 1)).toThrow('"field":"readings"');
  });
});
