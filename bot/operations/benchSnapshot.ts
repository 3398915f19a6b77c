import { assumedProgress } from "../../core/bench/assumedProgress.ts";
import type { BenchJob, BenchSnapshot, Station } from "../../core/bench/benchTypes.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { truckPresses } from "../../db/repositories/benchPresses.ts";
import { benchStates, benchVersion, type OrderRow, ordersIn, requestOf } from "../../db/repositories/orders.ts";
import { currentEvent, openingsFrom } from "../../db/repositories/people.ts";
import { numbersSet } from "../../db/repositories/settings.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";
import { attendedTimes } from "./attendedTimes.ts";
import { awaitsClub } from "./awaitsClub.ts";
import { type BenchExtra, extraJobs, workOf } from "./benchExtra.ts";
import { techniciansAt } from "./crew.ts";
import { orderWeight } from "./orderWeight.ts";

/** A workshop truck as they usually are; common practice, no source. */
const usualStations: Readonly<Record<Station, number>> = {
  bench: 2,
  cutter: 1,
  bonding: 2,
  gripping: 1,
  loftLie: 1,
  scale: 1,
  marking: 1,
  walk: 4,
};

/** How many clubs each station holds at once: the truck's own numbers where the lead has set them. */
export function stationsAt(reader: Reader, truckId: Id<"truck"> | null): Readonly<Record<Station, number>> {
  const set = truckId === null ? new Map<string, number>() : numbersSet(reader, `stations.${truckId}`);
  return Object.fromEntries(Object.entries(usualStations).map(([name, usual]) => [name, set.get(name) ?? usual])) as unknown as Record<
    Station,
    number
  >;
}

/** What keeps an order from the bench: held, or a club that has yet to come; till when, if that is said. */
function kept(reader: Reader, order: OrderRow, now: Instant): { readonly held: boolean; readonly releaseAt: Instant | null } {
  const { request } = requestOf(reader, order);
  const isKept = order.heldReason !== null || (order.state === "confirmed" && awaitsClub(request, order));
  const comes = order.expectedAt !== null && order.expectedAt > now ? order.expectedAt : null;
  return { held: isKept && comes === null, releaseAt: isKept ? comes : null };
}

function jobsOf(reader: Reader, order: OrderRow, now: Instant): readonly BenchJob[] {
  const { held, releaseAt } = kept(reader, order, now);
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
    releaseAt,
    dueAt: order.byAt,
    weight: orderWeight(order),
    held,
  }));
}

/** Presses of earlier days tell nothing of an order under way. */
const REMEMBERED_MS = 3 * 24 * 3_600_000;

/**
 * Reads a truck's whole workshop as it stands, with one order more when asked. Between two presses an order is as far as it
 * probably is.
 *
 * @param reader - database or transaction
 * @param truckId - whose bench
 * @param now - the moment
 * @param extra - an order that is not on the bench yet, or null
 */
export function benchSnapshot(reader: Reader, truckId: Id<"truck">, now: Instant, extra: BenchExtra | null): BenchSnapshot {
  const current = currentEvent(reader, truckId, now);
  const since = instant(now - REMEMBERED_MS);
  const presses = truckPresses(reader, truckId, since);
  const openings = openingsFrom(reader, truckId, since);
  const jobs = ordersIn(reader, truckId, benchStates).flatMap((order) => {
    const { person, times } = attendedTimes(presses, order.id, openings, now);
    return assumedProgress(jobsOf(reader, order, now), times, person, now);
  });
  return {
    version: benchVersion(reader, truckId),
    now,
    technicians: techniciansAt(reader, truckId),
    stations: stationsAt(reader, truckId),
    open: openings.filter(({ to }) => to >= now).map(({ from, to }) => ({ from: instant(Math.max(from, 0)), to })),
    rollOutAt: current === null || current.rollOutAt <= now ? null : current.rollOutAt,
    jobs: extra === null ? jobs : [...jobs, ...extraJobs(extra)],
  };
}
