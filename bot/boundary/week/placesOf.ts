import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown, requireUnique } from "./known.ts";
import type { ReadRow } from "./readTable.ts";
import type { WeekTables } from "./weekTables.ts";

/** The places parts lie in: a label is unique within its truck, home base is no truck's. */
export function placesOf({ places, trucks, players }: WeekTables, faults: FaultList): Pick<Week, "places"> {
  const [truckNames, handles] = [namesIn(trucks, "name"), namesIn(players, "handle")];
  requireUnique(faults, places.rows, ["truck", "label"]);
  for (const row of places.rows) {
    const { kind, truck, player } = row.value;
    requireKnown(faults, row, "truck", truckNames, trucks.file);
    requireKnown(faults, row, "player", handles, players.file);
    if (kind === "homeBase" && truck !== null) faults.add(row, "truck", "nothing: home base is no truck's");
    if (kind !== "homeBase" && truck === null) faults.add(row, "truck", "the truck the place is in");
    if (kind === "playerBin" && player === null) faults.add(row, "player", "the player whose bin it is");
    if (kind !== "playerBin" && kind !== "drawer" && player !== null) faults.add(row, "player", "nothing: only bins and drawers are a player's");
  }
  return { places: places.rows.map(({ value }) => value) };
}

/** Requires the place a row names to be one of its truck's, or of home base when no truck is named. */
export function requirePlace({ places }: WeekTables, faults: FaultList, rows: readonly ReadRow<unknown>[]): void {
  const known = new Set(places.written.map(({ cells }) => JSON.stringify([cells.truck, cells.label])));
  for (const row of rows) {
    if (known.has(JSON.stringify([row.cells.truck, row.cells.place]))) continue;
    const where = row.cells.truck === "" ? "without a truck" : `of the truck ${row.cells.truck}`;
    faults.add(row, "place", `a place ${where} in ${places.file}`);
  }
}
