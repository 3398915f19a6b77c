import { describe, expect, it } from "vitest";
import { type ClubFacts, checkedClubFacts } from "../../../core/rules/clubFacts.ts";

/** What a gauge could ever show of a club, lowest and highest; common practice, no source. */
const spans: readonly (readonly [string, string, number, number])[] = [
  ["lengthMm", "mm", 100, 3000],
  ["squaredLoftDeg", "deg", -45, 90],
  ["seatedLieDeg", "deg", 20, 100],
  ["shaftForwardLeanDeg", "deg", -60, 60],
  ["shaftBendAboveSoleMm", "mm", 0, 1500],
  ["neckLengthMm", "mm", 0, 1000],
  ["gripLengthMm", "mm", 0, 1500],
  ["gripWidestMm", "mm", 5, 200],
  ["gripOutOfRoundMm", "mm", 0, 100],
  ["twoGripGapMm", "mm", 0, 1500],
  ["twoGripUpperLengthMm", "mm", 0, 1500],
  ["headHeelToToeMm", "mm", 10, 500],
  ["headFaceToBackMm", "mm", 1, 500],
  ["headSoleToCrownMm", "mm", 1, 500],
  ["headVolumeCm3", "cm³", 1, 2000],
  ["headInertiaKgCm2", "kg·cm²", 0, 100],
  ["faceHeelToToeMm", "mm", 1, 500],
  ["faceTimeUs", "µs", 1, 2000],
  ["insertProudMm", "mm", -20, 20],
  ["faceHardnessShoreD", "Shore D", 0, 100],
  ["faceHardnessShoreA", "Shore A", 0, 100],
  ["grooveWidthMm", "mm", 0.01, 10],
  ["grooveDepthMm", "mm", 0, 10],
  ["grooveSeparationMm", "mm", 0, 50],
  ["grooveAreaMm2", "mm²", 0, 50],
  ["grooveEdgeRadiusMm", "mm", 0, 10],
  ["punchMarkAreaMm2", "mm²", 0, 500],
  ["punchMarkSpacingMm", "mm", 0, 100],
  ["punchMarkDepthMm", "mm", 0, 20],
  ["centreDesignSideMm", "mm", 0, 200],
  ["sideMarkingFromCentreMm", "mm", 0, 200],
];

describe("checkedClubFacts", () => {
  const club = (field: string, value: number | null): ClubFacts => ({ family: "driver", [field]: value });

  it.each(spans)("takes a %s in %s from %d to %d and nothing past them", (field, unit, min, max) => {
    expect(checkedClubFacts(club(field, min))).toEqual(club(field, min));
    expect(checkedClubFacts(club(field, max))).toEqual(club(field, max));
    for (const wrong of [min - 0.001, max + 0.001, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(() => checkedClubFacts(club(field, wrong))).toThrow(
        `quantity-out-of-range {"field":"${field}","unit":"${unit}","min":${min},"max":${max}`,
      );
    }
  });

  it("takes what was not measured, as null or left out", () => {
    expect(checkedClubFacts(club("lengthMm", null))).toEqual({ family: "driver", lengthMm: null });
    expect(checkedClubFacts({ family: "putter" })).toEqual({ family: "putter" });
  });
});
