import { describe, expect, it } from "vitest";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { sleeveChart } from "../../../core/head/sleeveChart.ts";
import { turnedMark } from "../../../core/head/turnedMark.ts";
import published from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import { someSleeve } from "../buildSheet/someParts.ts";

const head = { ...published.head, hand: "right" as const };

describe(`sleeveChart (${published.source})`, () => {
  it("lists every mark in the order of the sleeve, with the published angles", () => {
    const sleeve = someSleeve({
      tiltDeg: 1.5,
      standardMark: "flat",
      marks: [
        { mark: "flat", clockDeg: 270 },
        { mark: "weakest", clockDeg: 0 },
        { mark: "upright", clockDeg: 90 },
      ],
    });
    const rows = sleeveChart(head, sleeve);
    expect(rows.map(({ mark }) => mark)).toEqual(["flat", "weakest", "upright"]);
    for (const { mark, attitude } of rows) {
      const clockDeg = sleeve.marks.find((entry) => entry.mark === mark)?.clockDeg;
      const wanted = published.rows.find((row) => row.tiltDeg === 1.5 && row.clockDeg === clockDeg);
      expect(Math.abs(attitude.squaredLoftDeg - (wanted?.squaredLoftDeg ?? Number.NaN))).toBeLessThan(published.tolerance);
      expect(Math.abs(attitude.soledFaceDeg - (wanted?.soledFaceDeg ?? Number.NaN))).toBeLessThan(published.tolerance);
    }
  });

  it("counts from the standard mark: upright is 3° of lie from flat with a tilt of 1.5° (worked example)", () => {
    const sleeve = someSleeve({
      tiltDeg: 1.5,
      standardMark: "flat",
      marks: [
        { mark: "flat", clockDeg: 270 },
        { mark: "upright", clockDeg: 90 },
      ],
    });
    const [flat, upright] = sleeveChart(head, sleeve);
    expect(flat?.fromStandard).toEqual({ squaredLoftDeg: 0, soledFaceDeg: 0, seatedLieDeg: 0 });
    expect(upright?.fromStandard.seatedLieDeg).toBeCloseTo(3, 9);
    expect(upright?.fromStandard.soledFaceDeg).toBeCloseTo(0, 9);
  });

  it("refuses a standard mark that is not printed", () => {
    expect(() => sleeveChart(head, someSleeve({ standardMark: "nowhere" }))).toThrow("quantity-unreadable");
  });
});

describe("turnedMark", () => {
  const sleeve = someSleeve({});

  it.each([
    ["standard", -1, "strong 1"],
    ["standard", 1, "weak 1"],
    ["strong 1", -1, "strong 2"],
    ["strong 2", 2, "standard"],
    ["standard", 0, "standard"],
  ])("turns %s by %d to %s", (mark, marks, wanted) => {
    expect(turnedMark(sleeve, mark, marks)).toBe(wanted);
  });

  it.each([
    ["strong 2", -1],
    ["nowhere", -1],
    ["standard", 99],
    ["standard", 0.5],
    ["standard", Number.NaN],
  ])("knows no mark for %s by %d", (mark, marks) => {
    expect(turnedMark(sleeve, mark, marks)).toBeNull();
  });

  it("takes loft off with every stronger mark, in either hand", () => {
    for (const hand of ["right", "left"] as const) {
      const loftAt = (mark: string | null) => {
        const clockDeg = sleeve.marks.find((entry) => entry.mark === mark)?.clockDeg ?? Number.NaN;
        return attitudeOf({ ...head, hand }, { tiltDeg: sleeve.tiltDeg, clockDeg }).squaredLoftDeg;
      };
      expect(loftAt(turnedMark(sleeve, "standard", -1))).toBeLessThan(loftAt("standard"));
      expect(loftAt(turnedMark(sleeve, "standard", -2))).toBeLessThan(loftAt("strong 1"));
      expect(loftAt(turnedMark(sleeve, "standard", 1))).toBeGreaterThan(loftAt("standard"));
    }
  });
});
