import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown, requireUnique } from "./known.ts";
import type { WeekTables } from "./weekTables.ts";

/** Wins, and the stamps that are owed. */
export function winsOf({ wins, markings, players, events }: WeekTables, faults: FaultList): Pick<Week, "wins" | "markings"> {
  const [handles, eventNames] = [namesIn(players, "handle"), namesIn(events, "name")];
  requireUnique(faults, wins.rows, ["player", "event"]);
  for (const row of wins.rows) {
    requireKnown(faults, row, "player", handles, players.file);
    requireKnown(faults, row, "event", eventNames, events.file);
  }
  for (const row of markings.rows) requireKnown(faults, row, "player", handles, players.file);
  return {
    wins: wins.rows.map(({ value: { won_on, ...win } }) => ({ ...win, wonOn: won_on })),
    markings: markings.rows.map(({ value }) => value),
  };
}
