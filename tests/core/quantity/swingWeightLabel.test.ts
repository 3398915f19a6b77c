import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { swingWeightLabel } from "../../../core/quantity/swingWeightLabel.ts";
import { swingWeightPointsOf } from "../../../core/quantity/swingWeightPointsOf.ts";
import { inchOuncesFromPoints, pointsFromInchOunces } from "../../../core/quantity/swingWeightScale.ts";
import { inchOunces, swingWeightPoints } from "../../../core/quantity/units.ts";
import scale from "../../../fixtures/published/swingWeightScale.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "../club/refusals.ts";

const rows = scale.rows as [string, number][];

describe(byTable(pointsFromInchOunces, "swingWeightScale", scale), () => {
  it.each(rows)("has %s at %d in-oz", (label, moment) => {
    expect(pointsFromInchOunces(inchOunces(moment))).toBeCloseTo(swingWeightPointsOf(label) ?? Number.NaN, 9);
  });

  it("refuses moments that cannot be", () => {
    refusedOutside((moment) => pointsFromInchOunces(inchOunces(moment)), -12_000, 12_000);
  });
});

describe(byTable(inchOuncesFromPoints, "swingWeightScale", scale), () => {
  it.each(rows)("has %s at %d in-oz", (label, moment) => {
    const points = swingWeightPointsOf(label) ?? swingWeightPoints(Number.NaN);
    expect(Math.abs(inchOuncesFromPoints(points) - moment)).toBeLessThan(scale.tolerance);
  });

  it("refuses points that cannot be", () => {
    refusedOutside((points) => inchOuncesFromPoints(swingWeightPoints(points)), -6700, 6700);
  });
});

describe(byTable(swingWeightLabel, "swingWeightScale", scale), () => {
  it.each(rows)("reads %s at %d in-oz", (label, moment) => {
    expect(swingWeightLabel(swingWeightPoints((moment - 213.5) / 1.75))).toBe(label);
  });
});

describe(byTable(swingWeightPointsOf, "swingWeightScale", scale), () => {
  it.each(rows)("reads %s as %d in-oz", (label, moment) => {
    expect(swingWeightPointsOf(label)).toBeCloseTo((moment - 213.5) / 1.75, 9);
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
    [40.1, "G10"],
    [-30.1, "A0"],
  ])("shows %d points to the quarter as %s", (points, label) => {
    expect(swingWeightLabel(swingWeightPoints(points))).toBe(label);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("refuses %d", (points) => {
    expect(() => swingWeightLabel(swingWeightPoints(points))).toThrow("quantity-out-of-range");
  });
});

describe(byLaw(swingWeightPointsOf, "reads back what the label wrote"), () => {
  it("on every quarter point of the scale", () => {
    fc.assert(
      fc.property(fc.integer({ min: -120, max: 160 }), (quarters) => {
        expect(swingWeightPointsOf(swingWeightLabel(swingWeightPoints(quarters / 4)))).toBe(quarters / 4);
      }),
    );
  });
});

describe("swingWeightPointsOf", () => {
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
