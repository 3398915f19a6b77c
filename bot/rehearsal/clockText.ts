import { TZDate } from "@date-fns/tz";
import { format } from "date-fns";
import type { Instant } from "../../core/kinds.ts";

/** The time of day in a zone, `14:02`; with the date, `Tue 4 May 07:00`, when that is not today there. */
export function clockText(at: Instant, zone: string, now: Instant): string {
  const [there, today] = [new TZDate(at, zone), new TZDate(now, zone)];
  const isToday = format(there, "yyyy-MM-dd") === format(today, "yyyy-MM-dd");
  const isThisYear = there.getFullYear() === today.getFullYear();
  return format(there, isToday ? "HH:mm" : isThisYear ? "EEE d MMM HH:mm" : "EEE d MMM yyyy HH:mm");
}
