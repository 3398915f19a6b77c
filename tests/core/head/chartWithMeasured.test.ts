import { describe, expect, it } from "vitest";
import { attitudeFrom, type Reading, readings } from "../../../core/head/attitude.ts";
import { chartWithMeasured, type MeasuredMark, PLAUSIBLE_DIFFERENCE_DEG } from "../../../core/head/chartWithMeasured.ts";
import { sleeveChart } from "../../../core/head/sleeveChart.ts";
import { degrees } from "../../../core/quantity/units.ts";
import fromFlat from "../../../fixtures/published/sleeveFromFlatStandard.json" with { type: "json" };
import published from "../../../fixtures/published/sleeveGeometry.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { bareHead, sleeveOf } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

const head = bareHead(published.head);
const chart = sleeveChart(head, sleeveOf(1.5, [270, 225, 180]));
const modelled = (mark: string, reading: Reading) => chart.find((row) => row.mark === mark)?.attitude[reading] ?? Number.NaN;
const off = (mark: string, reading: Reading, byDeg: number): MeasuredMark => ({ mark, [reading]: degrees(modelled(mark, reading) + byDeg) });

describe(byTable(chartWithMeasured, "sleeveFromFlatStandard", fromFlat), () => {
  it("counts measured from measured: the published readings of a sleeve of 1.5° on the chart of one of 0.5°", () => {
    const measured = published.rows
      .filter(({ tiltDeg, clockDeg }) => tiltDeg === 1.5 && (clockDeg === 270 || clockDeg === 180))
      .map(({ clockDeg, ...row }) => ({ mark: String(clockDeg), ...attitudeFrom((reading) => row[reading]) }));
    const rows = chartWithMeasured(sleeveChart(head, sleeveOf(0.5, [270, 225, 180])), measured);
    const wanted = fromFlat.rows.find(({ clockDeg }) => clockDeg === 180);
    const got = rows.find(({ mark }) => mark === "180");
    expect(Math.abs((got?.fromStandard.seatedLieDeg ?? Number.NaN) - (wanted?.seatedLieDeg ?? Number.NaN))).toBeLessThan(fromFlat.tolerance);
    expect(Math.abs((got?.fromStandard.soledFaceDeg ?? Number.NaN) - (wanted?.soledFaceDeg ?? Number.NaN))).toBeLessThan(fromFlat.tolerance);
    expect(got?.implausible.map(({ reading }) => reading)).toEqual(["squaredLoftDeg", "squaredLoftAtDesignLieDeg", "soledFaceDeg"]);
  });
});

describe(byLaw(chartWithMeasured, "measuring what the model says changes nothing"), () => {
  it("keeps every reading and doubts none", () => {
    const rows = chartWithMeasured(
      chart,
      chart.map(({ mark, attitude }) => ({ mark, ...attitude })),
    );
    expect(rows).toEqual(chart.map((row) => ({ ...row, measured: readings, implausible: [] })));
  });

  it("is the model where nothing was measured", () => {
    expect(chartWithMeasured(chart, [])).toEqual(chart.map((row) => ({ ...row, measured: [], implausible: [] })));
  });
});

describe("chartWithMeasured", () => {
  it("puts the measured reading in and keeps the rest of the row", () => {
    const [, row] = chartWithMeasured(chart, [off("225", "soledFaceDeg", 0.3)]);
    expect(row?.attitude).toEqual({ ...chart[1]?.attitude, soledFaceDeg: modelled("225", "soledFaceDeg") + 0.3 });
    expect(row?.measured).toEqual(["soledFaceDeg"]);
    expect(row?.implausible).toEqual([]);
  });

  it("steps from standard by the model while one of the two marks was not measured", () => {
    const [standard, row] = chartWithMeasured(chart, [off("270", "squaredLoftDeg", 0.3)]);
    expect(standard?.fromStandard.squaredLoftDeg).toBe(0);
    expect(row?.fromStandard).toEqual(chart[1]?.fromStandard);
    const [, other] = chartWithMeasured(chart, [off("225", "squaredLoftDeg", 0.3)]);
    expect(other?.fromStandard).toEqual(chart[1]?.fromStandard);
  });

  it("steps by what was measured where both marks were, so that an offset of the gauge cancels", () => {
    const [, offset] = chartWithMeasured(chart, [off("270", "squaredLoftDeg", 0.3), off("225", "squaredLoftDeg", 0.3)]);
    expect(offset?.fromStandard.squaredLoftDeg).toBeCloseTo(chart[1]?.fromStandard.squaredLoftDeg ?? Number.NaN, 9);
    const [, step] = chartWithMeasured(chart, [off("270", "squaredLoftDeg", 0.3), off("225", "squaredLoftDeg", -0.1)]);
    expect(step?.fromStandard.squaredLoftDeg).toBeCloseTo((chart[1]?.fromStandard.squaredLoftDeg ?? Number.NaN) - 0.4, 9);
  });

  it("tells which reading is doubted and by how much, above half a degree either way", () => {
    const doubts = (byDeg: number) => chartWithMeasured(chart, [off("180", "seatedLieDeg", byDeg)])[2]?.implausible;
    expect(PLAUSIBLE_DIFFERENCE_DEG).toBe(0.5);
    expect(doubts(0.5)).toEqual([]);
    expect(doubts(-0.5)).toEqual([]);
    for (const byDeg of [0.501, -0.501]) {
      const modelledDeg = modelled("180", "seatedLieDeg");
      expect(doubts(byDeg)).toEqual([
        { reading: "seatedLieDeg", modelledDeg, measuredDeg: modelledDeg + byDeg, differenceDeg: expect.closeTo(byDeg, 9) },
      ]);
    }
  });

  it("doubts by the difference asked for", () => {
    const doubts = (plausibleDeg: number) => chartWithMeasured(chart, [off("180", "seatedLieDeg", 0.3)], degrees(plausibleDeg))[2]?.implausible;
    expect(doubts(0.25)).toHaveLength(1);
    expect(doubts(0.35)).toHaveLength(0);
    expect(doubts(0)).toHaveLength(1);
    expect(doubts(20)).toHaveLength(0);
    expect(() => doubts(-0.001)).toThrow('"field":"plausibleDeg"');
    expect(() => doubts(20.001)).toThrow('"field":"plausibleDeg"');
  });

  it("refuses every number of its call when it is none", () => {
    const measured = chart.map(({ mark, attitude }) => ({ mark, ...attitude }));
    for (const { where, args } of spoiled([chart, measured, degrees(0.5)] as const)) {
      expect(() => chartWithMeasured(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it.each([
    ["squaredLoftDeg", -20, 80],
    ["squaredLoftAtDesignLieDeg", -20, 80],
    ["soledFaceDeg", -40, 40],
    ["seatedLieDeg", 35, 90],
  ] as const)("takes a measured %s from %d to %d and nothing past that", (reading, min, max) => {
    const measure = (value: number) => chartWithMeasured(chart, [{ mark: "270", [reading]: degrees(value) }])[0]?.attitude[reading];
    expect(measure(min)).toBe(min);
    expect(measure(max)).toBe(max);
    expect(() => measure(min - 0.001)).toThrow(`"field":"measured ${reading}"`);
    expect(() => measure(max + 0.001)).toThrow(`"field":"measured ${reading}"`);
  });

  it("refuses a chart past half a turn, with the reading's name", () => {
    const [row] = chart;
    const past = (part: "attitude" | "fromStandard", deg: number) => () =>
      chartWithMeasured(row === undefined ? [] : [{ ...row, [part]: { ...row[part], soledFaceDeg: degrees(deg) } }], []);
    expect(past("attitude", 180)).not.toThrow();
    expect(past("attitude", 180.001)).toThrow('"field":"soledFaceDeg"');
    expect(past("fromStandard", -180)).not.toThrow();
    expect(past("fromStandard", -180.001)).toThrow('"field":"soledFaceDeg from standard"');
  });

  it("refuses a mark that is not on the chart, and one measured twice", () => {
    expect(() => chartWithMeasured(chart, [{ mark: "90" }])).toThrow('{"field":"mark","written":"90","accepted":"270, 225, 180"}');
    expect(() => chartWithMeasured(chart, [{ mark: "225" }, { mark: "180" }, { mark: "225" }])).toThrow(
      '{"field":"mark","written":"225","accepted":"every mark once"}',
    );
  });

  it("refuses an empty chart", () => {
    expect(() => chartWithMeasured([], [])).toThrow("list-of-wrong-size");
  });
});
