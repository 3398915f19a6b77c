import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown, requireUnique } from "./known.ts";
import { requirePlace } from "./placesOf.ts";
import type { WeekTables } from "./weekTables.ts";

/** Counted parts and goods, where they lie. */
export function stockOf(tables: WeekTables, faults: FaultList): Pick<Week, "stock"> {
  const { stock } = tables;
  const sources = { shaft: tables.shafts, grip: tables.grips, sleeve: tables.sleeves, weight: tables.weights, goods: tables.goods };
  const names = {
    shaft: namesIn(sources.shaft, "name"),
    grip: namesIn(sources.grip, "name"),
    sleeve: namesIn(sources.sleeve, "name"),
    weight: namesIn(sources.weight, "name"),
    goods: namesIn(sources.goods, "name"),
  };
  requireUnique(faults, stock.rows, ["truck", "place", "kind", "model"]);
  requirePlace(tables, faults, stock.rows);
  for (const row of stock.rows) requireKnown(faults, row, "model", names[row.value.kind], sources[row.value.kind].file);
  return { stock: stock.rows.map(({ value }) => value) };
}
