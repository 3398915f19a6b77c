import type { BenchJob, BenchSnapshot, Skill, Station, Technician } from "../../core/bench/benchTypes.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { benchStates, benchVersion, type OrderRow, ordersIn, requestOf } from "../../db/repositories/orders.ts";
import { currentEvent, openingsFrom, techniciansOf } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";
import { awaitsClub } from "./awaitsClub.ts";
import { type BenchExtra, extraJobs, workOf } from "./benchExtra.ts";
import { orderWeight } from "./orderWeight.ts";

const stations: Readonly<Record<Station, number>> = { bench: 2, cutter: 1, bonding: 2, gripping: 1, loftLie: 1, scale: 1, marking: 1, walk: 4 };

/** What everybody at a bench may do until the lead has said otherwise. */
export const usualSkills: readonly Skill[] = ["grinding", "stamping"];

function techniciansAt(reader: Reader, truckId: Id<"truck">): readonly Technician[] {
  return techniciansOf(reader, truckId).map(({ personId, skills, awayFrom, awayUntil }) => ({
    person: personId,
    skills: skills === null ? usualSkills : (JSON.parse(skills) as Skill[]),
    away: awayFrom === null ? [] : [{ from: awayFrom, to: awayUntil ?? instant(Number.MAX_SAFE_INTEGER) }],
  }));
}

function jobsOf(reader: Reader, order: OrderRow): readonly BenchJob[] {
  const { request } = requestOf(reader, order);
  const waitsForClub = order.state === "confirmed" && awaitsClub(request, order);
  return sheetsOf(reader, order).map((sheet, job) => ({
    order: order.id,
    job,
    work: workOf(order.kind, sheet.club),
    steps: sheet.steps.map((step) => ({
      route: step.route,
      state: step.state,
      startedAt: step.startedAt,
      finishedAt: step.finishedAt,
      workedMs: step.workedMs,
      person: step.personId,
    })),
    playableAfterBondMin: sheet.sheetPlan.playableAfterBondMin,
    playableAfterGripMin: sheet.sheetPlan.playableAfterGripMin,
    releaseAt: null,
    dueAt: order.byAt,
    weight: orderWeight(order),
    held: order.heldReason !== null || waitsForClub,
  }));
}

/**
 * Reads a truck's whole workshop as it stands, with one order more when asked.
 *
 * @param reader - database or transaction
 * @param truckId - whose bench
 * @param now - the moment
 * @param extra - an order that is not on the bench yet, or null
 */
export function benchSnapshot(reader: Reader, truckId: Id<"truck">, now: Instant, extra: BenchExtra | null): BenchSnapshot {
  const current = currentEvent(reader, truckId, now);
  const jobs = ordersIn(reader, truckId, benchStates).flatMap((order) => jobsOf(reader, order));
  return {
    version: benchVersion(reader, truckId),
    now,
    technicians: techniciansAt(reader, truckId),
    stations,
    open: openingsFrom(reader, truckId, now).map(({ from, to }) => ({ from: instant(Math.max(from, 0)), to })),
    rollOutAt: current === null || current.rollOutAt <= now ? null : current.rollOutAt,
    jobs: extra === null ? jobs : [...jobs, ...extraJobs(extra)],
  };
}
