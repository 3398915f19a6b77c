import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { groupBy, namesIn, requireKnown, requireUnique } from "./known.ts";
import type { WeekTables } from "./weekTables.ts";

/** The loft sleeves with their printed marks, one of them standard. */
export function sleevesOf({ sleeves, sleeveMarks }: WeekTables, faults: FaultList): Pick<Week, "sleeves"> {
  const names = namesIn(sleeves, "name");
  requireUnique(faults, sleeves.rows, ["name"]);
  requireUnique(faults, sleeveMarks.rows, ["sleeve", "mark"]);
  requireUnique(faults, sleeveMarks.rows, ["sleeve", "clock_deg"]);
  for (const row of sleeveMarks.rows) requireKnown(faults, row, "sleeve", names, sleeves.file);
  const marksBySleeve = groupBy(sleeveMarks.rows, ({ value }) => value.sleeve);
  return {
    sleeves: sleeves.rows.map((row) => {
      const marks = marksBySleeve.get(row.value.name) ?? [];
      const standard = marks.filter(({ value }) => value.standard);
      if (standard.length !== 1) faults.add(row, "name", `marks in ${sleeveMarks.file}, exactly one of them standard`);
      return {
        name: row.value.name,
        family: row.value.family,
        tiltDeg: row.value.tilt_deg,
        massG: row.value.mass_g,
        marks: marks.map(({ value }) => ({ mark: value.mark, clockDeg: value.clock_deg })),
        standardMark: standard[0]?.value.mark ?? "",
      };
    }),
  };
}
