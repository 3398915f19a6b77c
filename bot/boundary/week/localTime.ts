import { tzOffset } from "@date-fns/tz";
import { type Instant, instant } from "../../../core/kinds.ts";

/** A date and a time of day as read off a wall clock; `month` counts from 1. */
export interface LocalTime {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

const MS_PER_MINUTE = 60_000;
const MS_PER_DAY = 86_400_000;

/** @returns the days since 1970 of a date like `2027-05-03`, or null when the calendar has no such day */
export function readLocalDate(written: string): number | null {
  const match = /^(20\d\d)-(\d\d)-(\d\d)$/.exec(written);
  if (match === null) return null;
  const epochMs = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3]));
  return new Date(epochMs).toISOString().startsWith(written) ? epochMs / MS_PER_DAY : null;
}

/** @returns the parts of a date and time like `2027-05-03T07:00`, or null when there is no such day or time */
export function readLocalTime(written: string): LocalTime | null {
  const match = /^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)$/.exec(written);
  if (match === null || readLocalDate(match[1] ?? "") === null) return null;
  const [hour, minute] = [Number(match[2]), Number(match[3])];
  if (hour > 23 || minute > 59) return null;
  const [year = 0, month = 0, day = 0] = (match[1] ?? "").split("-").map(Number);
  return { year, month, day, hour, minute };
}

/** @returns the instant a zone's wall clock shows this time (the first of two in autumn), or null in a spring gap */
export function instantIn(zone: string, time: LocalTime): Instant | null {
  const asUtcMs = Date.UTC(time.year, time.month - 1, time.day, time.hour, time.minute);
  const offsetsMin = [asUtcMs - MS_PER_DAY, asUtcMs + MS_PER_DAY].map((nearbyMs) => tzOffset(zone, new Date(nearbyMs)));
  const shown = offsetsMin
    .map((offsetMin) => ({ offsetMin, epochMs: asUtcMs - offsetMin * MS_PER_MINUTE }))
    .filter(({ offsetMin, epochMs }) => tzOffset(zone, new Date(epochMs)) === offsetMin)
    .map(({ epochMs }) => epochMs);
  return shown.length === 0 ? null : instant(Math.min(...shown));
}

/** Zones found good before: asking for one is slow, and a file names the same few in every row. */
const knownZones = new Set<string>();
const MOST_REMEMBERED = 1_000;

/** @returns whether the zone is one of the time-zone database; offsets such as `+01:00` are not */
export function isZone(written: string): boolean {
  if (knownZones.has(written)) return true;
  if (!/^[A-Za-z][A-Za-z0-9_+/-]{1,50}$/.test(written)) return false;
  try {
    new Intl.DateTimeFormat("en", { timeZone: written });
  } catch {
    return false;
  }
  if (knownZones.size < MOST_REMEMBERED) knownZones.add(written);
  return true;
}
