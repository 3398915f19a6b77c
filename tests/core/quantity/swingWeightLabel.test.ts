import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { swingWeightLabel } from "../../../core/quantity/swingWeightLabel.ts";
import { swingWeightPointsOf } from "../../../core/quantity/swingWeightPointsOf.ts";
import { inchOuncesFromPoints, pointsFromInchOunces } from "../../../core/quantity/swingWeightScale.ts";
import scale from "../../../fixtures/published/swingWeightScale.json" with { type: "json" };

fc.configureGlobal({ seed: 20270503 });

describe(`swing-weight scale (${scale.source})`, () => {
  it.each(scale.rows as [string, number][])("reads %s at %d in-oz, both ways", (label, inchOunces) => {
    const points = pointsFromInchOunces(inchOunces);
    expect(swingWeightLabel(points)).toBe(label);
    expect(swingWeightPointsOf(label)).toBeCloseTo(points, 9);
    expect(Math.abs(inchOuncesFromPoints(points) - inchOunces)).toBeLessThan(scale.tolerance);
  });
});

describe("swingWeightLabel", () => {
  it.each([
    [3.25, "D3.25"],
    [3.1, "D3"],
    [3.2, "D3.25"],
    [-0.01, "D0"],
    [9.9, "E0"],
    [-30.3, "below A0"],
    [40.2, "above G10"],
  ])("shows %d points to the quarter as %s", (points, label) => {
    expect(swingWeightLabel(points)).toBe(label);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %d", (points) => {
    expect(() => swingWeightLabel(points)).toThrow("quantity-out-of-range");
  });
});

describe("swingWeightPointsOf", () => {
  it("reads back every quarter point of the scale", () => {
    fc.assert(
      fc.property(fc.integer({ min: -120, max: 160 }), (quarters) => {
        expect(swingWeightPointsOf(swingWeightLabel(quarters / 4))).toBe(quarters / 4);
      }),
    );
  });

  it.each([
    ["d3", 3],
    ["D 3.5", 3.5],
    [" c9,75 ", -0.25],
  ])("reads %j as %d points", (label, points) => {
    expect(swingWeightPointsOf(label)).toBe(points);
  });

  it.each(["", "d", "h3", "d10", "g11", "d3.5.5", "3d", "d-1", "dd3", `d${"9".repeat(5000)}`])("is no swing weight: %j", (label) => {
    expect(swingWeightPointsOf(label)).toBeNull();
  });
});
