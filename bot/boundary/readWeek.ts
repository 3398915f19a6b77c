import { eventsOf } from "./week/eventsOf.ts";
import { FaultList } from "./week/faultList.ts";
import { headBendsOf } from "./week/headBendsOf.ts";
import { headsOf } from "./week/headsOf.ts";
import { modelsOf } from "./week/modelsOf.ts";
import { ordersOf } from "./week/ordersOf.ts";
import { peopleOf } from "./week/peopleOf.ts";
import { placesOf } from "./week/placesOf.ts";
import { playersOf } from "./week/playersOf.ts";
import { shaftPiecesOf } from "./week/shaftPiecesOf.ts";
import { sleevesOf } from "./week/sleevesOf.ts";
import { specsOf } from "./week/specsOf.ts";
import { stockOf } from "./week/stockOf.ts";
import { weekTables } from "./week/weekTables.ts";
import { winsOf } from "./week/winsOf.ts";
import type { Week, WeekReading } from "./week.ts";

/** Reads a team's week from a folder of CSV files: all of it, or every fault by file, row and column. */
export function readWeek(folder: string): WeekReading {
  const tables = weekTables(folder);
  const faults = new FaultList();
  const week: Week = {
    ...peopleOf(tables, faults),
    ...playersOf(tables, faults),
    ...eventsOf(tables, faults),
    ...modelsOf(tables, faults),
    ...sleevesOf(tables, faults),
    ...placesOf(tables, faults),
    ...headsOf(tables, faults),
    ...headBendsOf(tables, faults),
    ...shaftPiecesOf(tables, faults),
    ...stockOf(tables, faults),
    ...specsOf(tables, faults),
    ...winsOf(tables, faults),
    ...ordersOf(tables, faults),
  };
  const files = Object.values(tables).map(({ file }) => file);
  const all = [...Object.values(tables).flatMap(({ faults: ofTable }) => ofTable), ...faults.all];
  if (all.length === 0) return { kind: "week", week };
  const inOrder = all.toSorted((one, other) => files.indexOf(one.file) - files.indexOf(other.file) || (one.row ?? 0) - (other.row ?? 0));
  return { kind: "faults", faults: inOrder };
}
