import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { type Degrees, degrees } from "../quantity/units.ts";
import { type Attitude, attitudeFrom, type Reading, readings } from "./attitude.ts";
import type { SleeveChartRow } from "./sleeveChart.ts";
import { eachMarkOnce, rowOfMark } from "./sleeveSettings.ts";

/** What a gauge read at one mark; what was not measured is left out. */
export interface MeasuredMark extends Partial<Attitude> {
  readonly mark: string;
}

/** A reading that the geometry of the sleeve does not explain. */
interface ImplausibleReading {
  readonly reading: Reading;
  readonly modelledDeg: Degrees;
  readonly measuredDeg: Degrees;
  readonly differenceDeg: Degrees;
}

/** A row of a chart in which measurements have replaced the model. */
interface MeasuredChartRow extends SleeveChartRow {
  readonly measured: readonly Reading[];
  readonly implausible: readonly ImplausibleReading[];
}

/** How far a gauge may be from the geometry before one of them is doubted. Common practice, no source. */
export const PLAUSIBLE_DIFFERENCE_DEG = degrees(0.5);

const ROUNDING_DEG = 1e-9;
const MOST_ROWS = 2304;
const gaugeLimits: Readonly<Record<Reading, { readonly min: number; readonly max: number }>> = {
  squaredLoftDeg: { min: -20, max: 80 },
  squaredLoftAtDesignLieDeg: { min: -20, max: 80 },
  soledFaceDeg: { min: -40, max: 40 },
  seatedLieDeg: { min: 35, max: 90 },
};

function checkedRow(row: SleeveChartRow): SleeveChartRow {
  for (const reading of readings) {
    inRange(row.attitude[reading], { field: reading, unit: "deg", min: -180, max: 180 });
    inRange(row.fromStandard[reading], { field: `${reading} from standard`, unit: "deg", min: -180, max: 180 });
  }
  return row;
}

function checkedMark(measured: MeasuredMark, chart: readonly SleeveChartRow[]): void {
  rowOfMark(chart, measured.mark, "mark");
  for (const reading of readings) {
    const value = measured[reading];
    if (value !== undefined) {
      inRange(value, { field: `measured ${reading}`, unit: "deg", ...gaugeLimits[reading] });
    }
  }
}

function implausibleIn(row: SleeveChartRow, measured: MeasuredMark | undefined, plausibleDeg: number): readonly ImplausibleReading[] {
  return readings.flatMap((reading) => {
    const measuredDeg = measured?.[reading];
    const modelledDeg = row.attitude[reading];
    if (measuredDeg === undefined || Math.abs(measuredDeg - modelledDeg) <= plausibleDeg + ROUNDING_DEG) {
      return [];
    }
    return [{ reading, modelledDeg, measuredDeg, differenceDeg: degrees(measuredDeg - modelledDeg) }];
  });
}

/**
 * A sleeve's chart with the readings of a gauge in place of the model's, and the readings that look wrong.
 *
 *     difference = measured − modelled, implausible above 0.5°
 *
 * Measured wins; the model only doubts it. From standard is measured against measured where both marks were, else the
 * model's, so that an offset of the gauge never looks like a step of the sleeve. A trained gauge repeats to ±1/8°, two
 * readings differ by ±0.18°.
 *
 * @param chart - as `sleeveChart` gives it, in degrees
 * @param measured - what a gauge read, in degrees, face open positive; each mark at most once
 * @param plausibleDeg - the largest difference in degrees that raises no doubt
 * @returns the rows in the same order, which readings were measured and which are implausible by how many degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `list-of-wrong-size` when the chart is empty
 * @throws {DomainError} `quantity-unreadable` when a measured mark is not on the chart or measured twice
 * @see fixtures/published/sleeveFromFlatStandard.json
 */
export function chartWithMeasured(
  chart: readonly SleeveChartRow[],
  measured: readonly MeasuredMark[],
  plausibleDeg: Degrees = PLAUSIBLE_DIFFERENCE_DEG,
): readonly MeasuredChartRow[] {
  const rows = listOf(chart, { field: "chart", min: 1, max: MOST_ROWS }).map(checkedRow);
  for (const one of measured) {
    checkedMark(one, rows);
  }
  eachMarkOnce(measured);
  inRange(plausibleDeg, { field: "plausibleDeg", unit: "deg", min: 0, max: 20 });
  const measuredAt = (row: SleeveChartRow | undefined) => measured.find(({ mark }) => mark === row?.mark);
  const standard = measuredAt(rows.find((row) => row.standard));
  return rows.map((row) => {
    const here = measuredAt(row);
    const step = (reading: Reading) => (here?.[reading] ?? Number.NaN) - (standard?.[reading] ?? Number.NaN);
    return {
      ...row,
      attitude: attitudeFrom((reading) => here?.[reading] ?? row.attitude[reading]),
      fromStandard: attitudeFrom((reading) => (Number.isNaN(step(reading)) ? row.fromStandard[reading] : step(reading))),
      measured: readings.filter((reading) => here?.[reading] !== undefined),
      implausible: implausibleIn(row, here, plausibleDeg),
    };
  });
}
