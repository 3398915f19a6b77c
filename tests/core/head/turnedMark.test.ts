import { describe, expect, it } from "vitest";
import { turnedMark } from "../../../core/head/turnedMark.ts";
import published from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import { byTable } from "../../support/checkOf.ts";
import { someSleeve } from "../buildSheet/someParts.ts";
import { sleeveOf } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const sleeve = someSleeve({});

describe(byTable(turnedMark, "sleeveGeometry", published), () => {
  const rows = published.rows.filter(({ tiltDeg }) => tiltDeg === 1.5);
  const printed = sleeveOf(1.5, [270, 225, 180, 135, 90, 45, 0, 315]);
  const loftAt = (mark: string | null) => rows.find(({ clockDeg }) => String(clockDeg) === mark)?.squaredLoftDeg ?? Number.NaN;

  it("takes loft off with every stronger mark and puts it on with every weaker one", () => {
    for (const from of ["90", "45", "270", "315"]) {
      expect(loftAt(turnedMark(printed, from, -1)), from).toBeLessThan(loftAt(from));
    }
    for (const from of ["270", "225", "90", "135"]) {
      expect(loftAt(turnedMark(printed, from, 1)), from).toBeGreaterThan(loftAt(from));
    }
  });
});

describe("turnedMark", () => {
  it.each([
    ["standard", -1, "strong 1"],
    ["standard", 1, "weak 1"],
    ["standard", -2, "strong 2"],
    ["standard", 2, "weak 2"],
    ["strong 1", -1, "strong 2"],
    ["strong 2", 2, "standard"],
    ["standard", 0, "standard"],
  ])("turns %s by %d to %s", (mark, marks, wanted) => {
    expect(turnedMark(sleeve, mark, marks)).toBe(wanted);
  });

  it.each([
    ["strong 2", -1],
    ["weak 2", 1],
    ["standard", -3],
    ["nowhere", -1],
    ["standard", 99],
    ["standard", 0.5],
  ])("knows no mark for %s by %d", (mark, marks) => {
    expect(turnedMark(sleeve, mark, marks)).toBeNull();
  });

  it("passes the standard mark where both ways round go weaker", () => {
    expect(turnedMark(sleeveOf(1, [0, 90, 180, 270], "90"), "180", 1)).toBe("90");
    expect(turnedMark(sleeveOf(1, [0, 90, 180, 270], "270"), "180", 1)).toBe("270");
  });

  it("takes a clock counted backwards for the same place", () => {
    expect(turnedMark(sleeveOf(1, [-90, 180, 225, -45]), "-90", -1)).toBe("225");
    expect(turnedMark(sleeveOf(1, [-90, 180, 225, -45]), "-90", 1)).toBe("-45");
  });

  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([sleeve, "standard", -1] as const)) {
      if (!where.includes("massG") && !where.includes(".id")) {
        expect(() => turnedMark(...args), where).toThrow("quantity-out-of-range");
      }
    }
  });

  it("takes up to 1000 marks either way and nothing past that", () => {
    expect(turnedMark(sleeve, "standard", 1000)).toBeNull();
    expect(turnedMark(sleeve, "standard", -1000)).toBeNull();
    expect(() => turnedMark(sleeve, "standard", 1001)).toThrow('"field":"marks"');
    expect(() => turnedMark(sleeve, "standard", -1001)).toThrow('"field":"marks"');
  });
});
