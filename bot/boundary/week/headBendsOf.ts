import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown } from "./known.ts";
import type { WeekTables } from "./weekTables.ts";
import { requireInstant } from "./zones.ts";

/** The bends heads have had before, each by someone who may bend; a head may have had several, and the same one twice. */
export function headBendsOf({ headBends, heads, people }: WeekTables, faults: FaultList): Pick<Week, "headBends"> {
  const [serials, handles] = [namesIn(heads, "serial"), namesIn(people, "handle")];
  const roles = new Map(people.rows.map(({ value }) => [value.handle, value.roles]));
  return {
    headBends: headBends.rows.map((row) => {
      const { serial, loft_change_deg, lie_change_deg, bent_at, zone, by } = row.value;
      requireKnown(faults, row, "serial", serials, heads.file);
      requireKnown(faults, row, "by", handles, people.file);
      const ofBender = roles.get(by);
      if (ofBender !== undefined && !ofBender.includes("technician")) faults.add(row, "by", "someone who is technician");
      if (loft_change_deg === 0 && lie_change_deg === 0) faults.add(row, "lie_change_deg", "a change of loft or of lie that is not 0");
      return { serial, loftChangeDeg: loft_change_deg, lieChangeDeg: lie_change_deg, at: requireInstant(faults, row, "bent_at", zone, bent_at), by };
    }),
  };
}
