import { type Skill, skills, type Technician } from "../../core/bench/benchTypes.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { touchBench } from "../../db/repositories/orders.ts";
import { benchesOf, openingsFrom, setTechnician, techniciansOf } from "../../db/repositories/people.ts";
import type { Reader, Tx } from "../../db/write.ts";
import { pauseWorkOf } from "./restStep.ts";

/** What everybody at a bench may do until the lead has said otherwise. */
export const usualSkills: readonly Skill[] = ["grinding", "stamping"];

const isSkill = (name: unknown): name is Skill => skills.some((skill) => skill === name);

function readSkills(stored: string | null): readonly Skill[] {
  const names: unknown = stored === null ? null : JSON.parse(stored);
  return Array.isArray(names) ? names.filter(isSkill) : usualSkills;
}

/** Who works at a truck's bench: their skills, and when they are away. */
export function techniciansAt(reader: Reader, truckId: Id<"truck">): readonly Technician[] {
  return techniciansOf(reader, truckId).map(({ personId, skills: stored, awayFrom, awayUntil }) => ({
    person: personId,
    skills: readSkills(stored),
    away: awayFrom === null ? [] : [{ from: awayFrom, to: awayUntil ?? instant(Number.MAX_SAFE_INTEGER) }],
  }));
}

const MS_PER_HOUR = 3_600_000;

/** The first opening after the workshop has been closed for some hours: the next working day. */
function nextDayOpens(reader: Reader, truckId: Id<"truck">, now: Instant): Instant | null {
  const open = openingsFrom(reader, truckId, now);
  const next = open.find(({ from }, at) => from > now && from - (open[at - 1]?.to ?? now) >= 4 * MS_PER_HOUR);
  return next?.from ?? null;
}

/** Somebody of a truck's bench, as far as they are on its list. */
export function technicianAt(reader: Reader, truckId: Id<"truck">, personId: Id<"person">): Technician | null {
  return techniciansAt(reader, truckId).find(({ person }) => person === personId) ?? null;
}

/** How somebody stands with a bench at a moment. */
export function shiftOf(technician: Technician | null, now: Instant): "on" | "off" | "elsewhere" {
  if (technician === null) {
    return "elsewhere";
  }
  return technician.away.some(({ from, to }) => from <= now && now < to) ? "off" : "on";
}

export interface SignedOff {
  /** When they are back; null when nothing says. */
  readonly until: Instant | null;
  /** What they were at rests meanwhile. */
  readonly paused: readonly OrderRow[];
}

/** Signs somebody of the bench off: till a moment, or else till the next working day opens. */
export function signOff(tx: Tx, truckId: Id<"truck">, personId: Id<"person">, now: Instant, till: Instant | null): SignedOff {
  const until = till ?? nextDayOpens(tx, truckId, now);
  const paused = pauseWorkOf(tx, truckId, personId, now);
  setTechnician(tx, truckId, personId, { awayFrom: now, awayUntil: until });
  touchBench(tx, truckId);
  return { until, paused };
}

/** Signs somebody on, adding them to the truck's bench where they are new to it. Nobody is at two benches: they are off elsewhere. */
export function signOn(tx: Tx, truckId: Id<"truck">, personId: Id<"person">, now: Instant): void {
  for (const elsewhere of benchesOf(tx, personId).filter((bench) => bench !== truckId)) {
    setTechnician(tx, elsewhere, personId, { awayFrom: now, awayUntil: null });
    touchBench(tx, elsewhere);
  }
  setTechnician(tx, truckId, personId, { awayFrom: null, awayUntil: null });
  touchBench(tx, truckId);
}

/** Says what somebody of the bench may do beside what everybody may; null is the usual. */
export function giveSkills(tx: Tx, truckId: Id<"truck">, personId: Id<"person">, given: readonly Skill[] | null): void {
  setTechnician(tx, truckId, personId, { skills: given === null ? null : JSON.stringify(given) });
  touchBench(tx, truckId);
}
