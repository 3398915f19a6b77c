import type { BenchJob, BenchSnapshot, Route, Station } from "../../core/bench/benchTypes.ts";
import { type Id, type Instant, id, instant } from "../../core/kinds.ts";
import { benchStates, benchVersion, type OrderRow, ordersIn, requestOf } from "../../db/repositories/orders.ts";
import { currentEvent, openingsFrom, technicianCount } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";
import { awaitsClub } from "./awaitsClub.ts";
import { orderWeight } from "./orderWeight.ts";

/** An order that is not on the bench yet, one route a club. */
export interface BenchExtra {
  readonly routes: readonly Route[];
  readonly dueAt: Instant | null;
  readonly urgent: boolean;
  /** The club it works on has yet to come in. */
  readonly releaseAt: Instant | null;
}

/** The order id that stands for one not yet on the bench. */
export const extraOrder = id<"order">(0);

const stations: Readonly<Record<Station, number>> = { bench: 2, cutter: 1, bonding: 2, gripping: 1, loftLie: 1, scale: 1, marking: 1, walk: 4 };

function jobsOf(reader: Reader, order: OrderRow): readonly BenchJob[] {
  const { request } = requestOf(reader, order);
  const waitsForClub = order.state === "confirmed" && awaitsClub(request, order);
  return sheetsOf(reader, order).map((sheet, job) => ({
    order: order.id,
    job,
    steps: sheet.steps.map((step) => ({
      route: step.route,
      state: step.state,
      startedAt: step.startedAt,
      finishedAt: step.finishedAt,
      workedMs: step.workedMs,
    })),
    playableAfterBondMin: sheet.sheetPlan.playableAfterBondMin,
    playableAfterGripMin: sheet.sheetPlan.playableAfterGripMin,
    releaseAt: null,
    dueAt: order.byAt,
    weight: orderWeight(order),
    held: order.heldReason !== null || waitsForClub,
  }));
}

function extraJobs(extra: BenchExtra): readonly BenchJob[] {
  return extra.routes.map((route, job) => ({
    order: extraOrder,
    job,
    steps: route.steps.map((step) => ({ route: step, state: "todo", startedAt: null, finishedAt: null, workedMs: 0 })),
    playableAfterBondMin: route.playableAfterBondMin,
    playableAfterGripMin: route.playableAfterGripMin,
    releaseAt: extra.releaseAt,
    dueAt: extra.dueAt,
    weight: orderWeight({ urgent: extra.urgent, byAt: extra.dueAt }),
    held: false,
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
    technicians: Math.max(1, technicianCount(reader, truckId)),
    stations,
    open: openingsFrom(reader, truckId, now).map(({ from, to }) => ({ from: instant(Math.max(from, 0)), to })),
    rollOutAt: current === null || current.rollOutAt <= now ? null : current.rollOutAt,
    jobs: extra === null ? jobs : [...jobs, ...extraJobs(extra)],
  };
}
