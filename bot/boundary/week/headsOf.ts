import type { ClubFamily } from "../../../core/kinds.ts";
import { rangeOf } from "../quantityRanges.ts";
import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { headRanges, type Range } from "./headRanges.ts";
import { namesIn, requireKnown, requireUnique } from "./known.ts";
import { requirePlace } from "./placesOf.ts";
import type { ReadRow } from "./readTable.ts";
import type { WeekTables } from "./weekTables.ts";
import { requireInstant } from "./zones.ts";

/** The measured heads; a value no head of its family can have is refused. */
export function headsOf(tables: WeekTables, faults: FaultList): Pick<Week, "heads"> {
  const { heads, headModels } = tables;
  const modelNames = namesIn(headModels, "name");
  const families = new Map(headModels.rows.map(({ value }) => [value.name, value.family]));
  requireUnique(faults, heads.rows, ["serial"]);
  requirePlace(tables, faults, heads.rows);
  return {
    heads: heads.rows.map((row) => {
      const { value } = row;
      requireKnown(faults, row, "model", modelNames, headModels.file);
      const family = families.get(value.model);
      if (family !== undefined) requirePossible(faults, row, family);
      return {
        serial: value.serial,
        model: value.model,
        hand: value.hand,
        stampedLoftDeg: value.stamped_loft_deg,
        soledLoftDeg: value.soled_loft_deg,
        designLieDeg: value.design_lie_deg,
        soledFaceDeg: value.soled_face_deg,
        bounceDeg: value.bounce_deg,
        massG: value.mass_g,
        measuredAt: requireInstant(faults, row, "measured_at", value.zone, value.measured_at),
        place: value.place,
        truck: value.truck,
      };
    }),
  };
}

function requirePossible(faults: FaultList, row: ReadRow<unknown>, family: ClubFamily): void {
  const { lieDeg, massG } = headRanges[family];
  const loftDeg = rangeOf("stampedLoftDeg", family);
  const check = (column: string, range: Range, unit: string) => {
    const written = Number(row.cells[column]);
    if (written < range.min || written > range.max) faults.add(row, column, `${family} ${range.min}–${range.max} ${unit}`);
  };
  check("stamped_loft_deg", loftDeg, "deg");
  check("soled_loft_deg", loftDeg, "deg");
  check("design_lie_deg", lieDeg, "deg");
  check("mass_g", massG, "g");
}
