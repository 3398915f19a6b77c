import type { Id } from "../kinds.ts";
import type { BenchSnapshot, Skill, StepKind } from "./benchTypes.ts";
import { type OpenHours, openHours, withoutAway } from "./openHours.ts";

/** Somebody at the bench as the simulation counts them. The fields that change hold one sample. */
export interface ModelTechnician {
  readonly person: Id<"person">;
  readonly skills: ReadonlySet<Skill>;
  /** When they work, apart and in order. */
  readonly hours: OpenHours;
  /** Steps at hand: one, or several that were begun before. */
  busy: number;
  /** How far `hours` has been passed. */
  interval: number;
  lastKind: StepKind | null;
  lastOrder: Id<"order"> | null;
}

/** The technicians of a bench with their hours; those with fewer skills first, so that a skill is kept for who needs it. */
export function modelTechnicians(snapshot: BenchSnapshot, rollOutMs: number): readonly ModelTechnician[] {
  const open = openHours(snapshot, rollOutMs);
  return snapshot.technicians
    .toSorted((a, b) => a.skills.length - b.skills.length)
    .map(({ person, skills, away }) => ({
      person,
      skills: new Set(skills),
      hours: withoutAway(open, away, snapshot.now),
      busy: 0,
      interval: 0,
      lastKind: null,
      lastOrder: null,
    }));
}

/** Until when somebody works from a moment on without a pause; −∞ when they do not work then. */
export function worksUntilMs(technician: ModelTechnician, nowMs: number): number {
  const { hours } = technician;
  while ((hours[technician.interval]?.toMs ?? Number.POSITIVE_INFINITY) <= nowMs) technician.interval += 1;
  const current = hours[technician.interval];
  return current !== undefined && current.fromMs <= nowMs ? current.toMs : Number.NEGATIVE_INFINITY;
}

/** When they next begin to work, later than a moment; infinite when they never do. */
export function nextHoursMs(technician: ModelTechnician, nowMs: number): number {
  for (let at = technician.interval; at < technician.hours.length; at++) {
    const fromMs = technician.hours[at]?.fromMs ?? Number.POSITIVE_INFINITY;
    if (fromMs > nowMs) return fromMs;
  }
  return Number.POSITIVE_INFINITY;
}
