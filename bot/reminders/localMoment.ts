import { TZDate } from "@date-fns/tz";
import { addDays, format } from "date-fns";
import { type Instant, instant } from "../../core/kinds.ts";

/** A moment as a venue's calendar and clock say it. */
export interface LocalMoment {
  readonly date: string;
  readonly tomorrow: string;
  readonly hour: number;
  readonly nextHourAt: Instant;
}

const MS_PER_HOUR = 3_600_000;

/** Reads a moment in a zone; zones off by part of an hour get their own full hours. */
export function localTime(now: Instant, zone: string): LocalMoment {
  const at = new TZDate(now, zone);
  const sinceHour = at.getMinutes() * 60_000 + at.getSeconds() * 1000 + at.getMilliseconds();
  return {
    date: format(at, "yyyy-MM-dd"),
    tomorrow: format(addDays(at, 1), "yyyy-MM-dd"),
    hour: at.getHours(),
    nextHourAt: instant(now - sinceHour + MS_PER_HOUR),
  };
}
