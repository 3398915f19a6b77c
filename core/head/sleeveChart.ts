import type { SleeveModel } from "../buildSheet/parts.ts";
import type { Attitude } from "../buildSheet/plan.ts";
import { DomainError } from "../errors.ts";
import { attitudeOf, type BareHead } from "./attitudeOf.ts";

/** One printed mark: what the head reads there, and how far that is from the standard mark. */
interface SleeveChartRow {
  readonly mark: string;
  readonly attitude: Attitude;
  readonly fromStandard: Attitude;
}

/**
 * What a head reads with its sleeve at every printed mark, in the order of the sleeve.
 *
 * @param head - measured bare, in degrees
 * @param sleeve - its tilt and marks; the clock is printed for a right-handed head
 * @returns one row a mark, angles in degrees
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible
 * @throws {DomainError} `quantity-unreadable` when the standard mark is not among the marks
 * @see fixtures/published/sleeveGeometry.json
 */
export function sleeveChart(head: BareHead, sleeve: SleeveModel): readonly SleeveChartRow[] {
  const at = (clockDeg: number) => attitudeOf(head, { tiltDeg: sleeve.tiltDeg, clockDeg });
  const rows = sleeve.marks.map(({ mark, clockDeg }) => ({ mark, attitude: at(clockDeg) }));
  const standard = rows.find((row) => row.mark === sleeve.standardMark)?.attitude;
  if (standard === undefined) {
    const accepted = sleeve.marks.map(({ mark }) => mark).join(", ");
    throw new DomainError("quantity-unreadable", { field: "standardMark", written: sleeve.standardMark, accepted });
  }
  return rows.map(({ mark, attitude }) => ({
    mark,
    attitude,
    fromStandard: {
      squaredLoftDeg: attitude.squaredLoftDeg - standard.squaredLoftDeg,
      soledFaceDeg: attitude.soledFaceDeg - standard.soledFaceDeg,
      seatedLieDeg: attitude.seatedLieDeg - standard.seatedLieDeg,
    },
  }));
}
