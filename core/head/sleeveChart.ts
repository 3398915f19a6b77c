import { type Attitude, attitudeFrom } from "./attitude.ts";
import { attitudeOf, type BareHead } from "./attitudeOf.ts";
import type { Sleeve } from "./sleeve.ts";
import { rowOfMark, sleeveSettings } from "./sleeveSettings.ts";

/** One printed mark: what the head reads there, and how far that is from the standard mark. */
export interface SleeveChartRow {
  readonly mark: string;
  readonly standard: boolean;
  readonly attitude: Attitude;
  readonly fromStandard: Attitude;
}

/**
 * What a head reads with its sleeve at every printed mark, in the order of the sleeve.
 *
 *     from standard = reading at the mark − reading at the standard mark
 *
 * The model and its accuracy are those of `attitudeOf`. The standard mark may lean to a side: a quarter turn from there
 * gives the full change of loft and τ of lie, half of it 0.71 of the loft and 0.29 τ of lie, the other side 2 τ of lie.
 *
 * @param head - measured bare, in degrees
 * @param sleeve - its tilt and marks in degrees, of one piece or two; the clock is printed for a right-handed head
 * @returns one row a mark, angles in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `list-of-wrong-size` when nothing is printed
 * @throws {DomainError} `quantity-unreadable` when the hand is none, a mark is printed twice or the standard mark is not among them
 * @see fixtures/published/sleeveFromFlatStandard.json
 */
export function sleeveChart(head: BareHead, sleeve: Sleeve): readonly SleeveChartRow[] {
  const rows = sleeveSettings(sleeve).map(({ mark, tilt }) => ({ mark, attitude: attitudeOf(head, tilt) }));
  const standard = rowOfMark(rows, sleeve.standardMark, "standardMark").attitude;
  return rows.map(({ mark, attitude }) => ({
    mark,
    standard: mark === sleeve.standardMark,
    attitude,
    fromStandard: attitudeFrom((reading) => attitude[reading] - standard[reading]),
  }));
}
