import { tzOffset } from "@date-fns/tz";
import { desc } from "drizzle-orm";
import { event } from "../../db/schema/people.ts";
import { audit } from "../../db/schema/plumbing.ts";
import type { Reader } from "../../db/write.ts";
import { type Check, fault, ok, type Verdict, warn } from "./finding.ts";

const FIRST_YEAR = 2026;
const LAST_YEAR = 2099;
/** British Summer Time began on the last Sunday of March 2026 at 01:00 UTC. */
const SPRING = { zone: "Europe/London", at: Date.UTC(2026, 2, 29, 1), beforeMin: 0, afterMin: 60 };
const CLOCK_REMEDY = "Set the clock of this machine, such as by timedatectl set-ntp true";

type OffsetOf = (zone: string, at: Date) => number;

/** The clock and the zone data of this machine; `reader` is null where there is no database to hold them against. */
export const timeChecks = (reader: Reader | null, now: () => number, offsetOf: OffsetOf = tzOffset): readonly Check[] => [
  { name: "clock", look: () => clock(now(), reader === null ? null : newestEntry(reader)) },
  { name: "zones", look: () => zones(reader === null ? [] : zonesOfEvents(reader), offsetOf) },
];

function clock(now: number, newest: number | null): Verdict {
  const shown = new Date(now).toISOString();
  const year = new Date(now).getUTCFullYear();
  if (year < FIRST_YEAR || year > LAST_YEAR) {
    return fault(`it is ${shown} here`, CLOCK_REMEDY);
  }
  return newest !== null && newest > now
    ? warn(
        `it is ${shown} here, and the newest entry of the record is of ${new Date(newest).toISOString()}`,
        `${CLOCK_REMEDY}; a week tried out ahead of its time looks the same`,
      )
    : ok(`it is ${shown} here`);
}

function zones(names: readonly string[], offsetOf: OffsetOf): Verdict {
  const remedy = "Install Node anew from its own packages: they carry the zone data";
  const offsets = [offsetOf(SPRING.zone, new Date(SPRING.at - 1)), offsetOf(SPRING.zone, new Date(SPRING.at))];
  if (offsets[0] !== SPRING.beforeMin || offsets[1] !== SPRING.afterMin) {
    return fault(`the spring change of ${SPRING.zone} in 2026 goes from ${offsets[0]} to ${offsets[1]} min, not from 0 to 60`, remedy);
  }
  const unknown = names.filter((zone) => Number.isNaN(offsetOf(zone, new Date(SPRING.at))));
  return unknown.length === 0
    ? ok(names.length === 0 ? "daylight saving is known" : `daylight saving and the zones of the events are known: ${names.join(", ")}`)
    : fault(`no zone is called ${unknown.join(", ")}`, `Correct the events' zone, such as Europe/London; else: ${remedy}`);
}

const newestEntry = (reader: Reader): number | null =>
  reader.select({ at: audit.at }).from(audit).orderBy(desc(audit.seq)).limit(1).get()?.at ?? null;

const zonesOfEvents = (reader: Reader): readonly string[] => [
  ...new Set(
    reader
      .select({ zone: event.zone })
      .from(event)
      .all()
      .map(({ zone }) => zone),
  ),
];
