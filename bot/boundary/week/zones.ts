import { type Instant, instant } from "../../../core/kinds.ts";
import type { FaultList } from "./faultList.ts";
import { instantIn, type LocalTime } from "./localTime.ts";
import type { ReadRow } from "./readTable.ts";
import type { WeekTables } from "./weekTables.ts";

/** The zone of each event that could be read. */
export function zonesOfEvents({ events }: WeekTables): ReadonlyMap<string, string> {
  return new Map(events.rows.map(({ value }) => [value.name, value.zone]));
}

/** The instant of a local time; a zone that is not known has been reported where it is written. */
export function requireInstant(faults: FaultList, row: ReadRow<unknown>, column: string, zone: string | undefined, time: LocalTime): Instant {
  if (zone === undefined) return instant(0);
  const at = instantIn(zone, time);
  if (at === null) faults.add(row, column, `a time the clocks of ${zone} show: this one is skipped that day`);
  return at ?? instant(0);
}
