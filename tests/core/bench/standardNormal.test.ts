import { describe, expect, it } from "vitest";
import { normalAbove, normalQuantile, normalUpperTail } from "../../../core/bench/standardNormal.ts";

describe("normalQuantile", () => {
  // Standard normal quantiles as printed in tables, from memory.
  it.each([
    [0.5, 0],
    [0.75, 0.674489750196082],
    [0.9, 1.2815515655446],
    [0.975, 1.95996398454005],
    [0.999, 3.09023230616781],
    [0.0001, -3.71901648545568],
    [1e-10, -6.36134090240406],
  ])("gives the tabulated quantile at %d", (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 12);
  });
});

describe("normalUpperTail", () => {
  // Upper tail areas as printed in tables, from memory; tolerance is their last digit.
  it.each([
    [0, 0.5, 1e-15],
    [1, 0.158655254, 1e-9],
    [2, 0.0227501319, 1e-10],
    [3, 0.0013498980316, 1e-13],
    [6, 9.865876e-10, 1e-16],
    [-1, 0.841344746, 1e-9],
  ])("gives the tabulated area above %d", (z, area, tolerance) => {
    expect(Math.abs(normalUpperTail(z) - area)).toBeLessThan(tolerance);
  });

  it("undoes the quantile from the centre to the far tail", () => {
    for (let exponent = 0.31; exponent < 300; exponent *= 1.1) {
      const p = 10 ** -exponent;
      expect(normalUpperTail(-normalQuantile(p)) / p).toBeCloseTo(1, 9);
    }
  });
});

describe("normalAbove", () => {
  it("halves what is left above the bound at u = 1/2", () => {
    for (const bound of [-3, -0.5, 0, 1, 2.5, 5, 20]) {
      expect(normalUpperTail(normalAbove(bound, 0.5)) / normalUpperTail(bound)).toBeCloseTo(0.5, 9);
    }
  });

  it("stays above a bound beyond the smallest double's tail", () => {
    expect(normalAbove(60, 0.99)).toBe(60);
  });
});
