import { TZDate } from "@date-fns/tz";
import { type Instant, instant } from "../../core/kinds.ts";
import type { Word } from "./wordsOf.ts";

/** What a time written after `by` says. */
export type ClockHit =
  | { readonly kind: "at"; readonly at: Instant; readonly next: number }
  | { readonly kind: "past"; readonly tomorrow: string; readonly next: number }
  | { readonly kind: "noSuchTime"; readonly guess: string | null; readonly next: number };

interface TimeOfDay {
  readonly hour: number;
  readonly minute: number;
  /** Written so that morning and afternoon cannot be mixed up. */
  readonly exact: boolean;
  readonly next: number;
}

const FIRST_WORKING_HOUR = 6;
const LAST_WORKING_HOUR = 20;
const MINUTE_MS = 60_000;
const weekdays = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"];
const weekdayShape = /^(sun|mon|tue|wed|thu|fri|sat)(?:day|s|sday|nesday|r|rs|rsday|urday|nes)?$/;
const tomorrows = new Set(["tomorrow", "tmrw", "tmr", "tomorow", "tom", "2moro"]);
const clockShape = /^(\d{1,2})(?::|\.)(\d{2})(am|pm|a|p|h)?$/;
const hourShape = /^(\d{1,2})(am|pm)$/;

/** The time as written, hour and minute unchecked; null when the word is no time at all. */
function timeAt(words: readonly Word[], at: number, bare: boolean): TimeOfDay | null {
  const text = words[at]?.text ?? "";
  if (text === "noon" || text === "midday") return { hour: 12, minute: 0, exact: true, next: at + 1 };
  const clock = clockShape.exec(text) ?? hourShape.exec(text);
  const run = /^\d{4}$/.exec(text);
  const hourOnly = bare && /^\d{1,2}$/.test(text);
  if (clock === null && run === null && !hourOnly) return null;
  const isHourShape = clock !== null && /^\d{1,2}(am|pm)$/.test(text);
  const hour = run !== null ? Number(text.slice(0, 2)) : Number(clock?.[1] ?? text);
  const minute = run !== null ? Number(text.slice(2)) : isHourShape ? 0 : Number(clock?.[2] ?? 0);
  const tail = isHourShape ? clock?.[2] : clock?.[3];
  const following = words[at + 1]?.text;
  const apart = tail === undefined && (following === "am" || following === "pm") ? following : undefined;
  const half = (tail ?? apart ?? "").slice(0, 1);
  const next = at + (apart === undefined ? 1 : 2);
  if (half === "a" || half === "p") return { hour: hour > 12 || hour === 0 ? 99 : (hour % 12) + (half === "p" ? 12 : 0), minute, exact: true, next };
  return { hour, minute, exact: hour > 12 || hour === 0 || text.startsWith("0") || tail === "h", next };
}

function localTime(now: Instant, zone: string, days: number, hour: number, minute: number): Instant | null {
  const today = new TZDate(now, zone);
  const date = new TZDate(today.getFullYear(), today.getMonth(), today.getDate() + days, hour, minute, zone);
  return date.getHours() === hour && date.getMinutes() === minute ? instant(date.getTime()) : null;
}

function swappedMinutes(time: TimeOfDay): string | null {
  const swapped = Number([...String(time.minute).padStart(2, "0")].reverse().join(""));
  return time.hour <= 23 && swapped <= 59 ? `${time.hour}:${String(swapped).padStart(2, "0")}` : null;
}

function hoursMeant(time: TimeOfDay): readonly number[] {
  if (time.exact) return [time.hour];
  return [time.hour, (time.hour + 12) % 24]
    .filter((hour) => hour >= FIRST_WORKING_HOUR && hour <= LAST_WORKING_HOUR)
    .sort((one, other) => one - other);
}

/** The first of the days and hours meant that is still ahead. */
function firstAhead(now: Instant, zone: string, days: readonly number[], time: TimeOfDay, hours: readonly number[]): ClockHit {
  for (const day of days) {
    for (const hour of hours) {
      const at = localTime(now, zone, day, hour, time.minute);
      if (at === null) return { kind: "noSuchTime", guess: null, next: time.next };
      if (at > now) return { kind: "at", at, next: time.next };
    }
  }
  const weekday = weekdays[(new TZDate(now, zone).getDay() + 1) % 7] ?? "";
  const hour = hours[0] ?? time.hour;
  return { kind: "past", tomorrow: `${weekday} ${String(hour).padStart(2, "0")}:${String(time.minute).padStart(2, "0")}`, next: time.next };
}

function dayAt(words: readonly Word[], at: number, now: Instant, zone: string): { readonly days: readonly number[]; readonly next: number } | null {
  const text = words[at]?.text ?? "";
  if (tomorrows.has(text)) return { days: [1], next: at + 1 };
  if (text === "today" || text === "tonight") return { days: [0], next: at + 1 };
  const weekday = weekdayShape.exec(text)?.[1];
  if (weekday === undefined) return null;
  const ahead = (weekdays.indexOf(weekday) - new TZDate(now, zone).getDay() + 7) % 7;
  return { days: ahead === 0 ? [0, 7] : [ahead], next: at + 1 };
}

/**
 * Reads a time in the venue's zone: `2:30pm`, `14:30`, `tue 7:00`, `tomorrow 7`, `noon`. A time without am or pm is the
 * next such time within the working day; one with a day and before six is in the afternoon.
 */
export function clockAt(
  words: readonly Word[],
  at: number,
  clock: { readonly now: Instant; readonly zone: string; readonly bare: boolean },
): ClockHit | null {
  const day = dayAt(words, at, clock.now, clock.zone);
  const timeStart = day === null ? at : day.next + (words[day.next]?.text === "at" ? 1 : 0);
  const time = timeAt(words, timeStart, clock.bare || day !== null);
  if (time === null) return day === null ? null : { kind: "noSuchTime", guess: null, next: day.next };
  if (time.hour > 23 || time.minute > 59) return { kind: "noSuchTime", guess: swappedMinutes(time), next: time.next };
  if (day === null) return firstAhead(clock.now, clock.zone, [0], time, hoursMeant(time));
  const hour = time.exact || time.hour >= FIRST_WORKING_HOUR ? time.hour : time.hour + 12;
  const hours = day.days[0] === 0 ? hoursMeant(time) : [hour];
  return firstAhead(clock.now, clock.zone, day.days, time, hours);
}

/** A number of minutes from now, for `in 20 min`. */
export function minutesFromNow(now: Instant, count: number): Instant {
  return instant(now + Math.round(count * MINUTE_MS));
}
