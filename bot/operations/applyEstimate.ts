import type { BenchSnapshot, ReadyEstimate } from "../../core/bench/benchTypes.ts";
import type { Policy } from "../../core/bench/policy.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { noteEstimated, noteOnSheet, promisesOf } from "../../db/repositories/benchEstimates.ts";
import { benchStates, noteOnOrder, type OrderRow, orderById, ordersIn } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { givePromise } from "./givePromise.ts";
import { type OrderTimes, timesOf } from "./orderTimes.ts";
import { type SlipCause, slipCause } from "./slipCause.ts";

export interface BenchEstimate {
  readonly snapshot: BenchSnapshot;
  readonly policy: Policy;
  readonly times: readonly ReadyEstimate[];
  /** Nothing was pressed since the last one: only slips are news, and no post is edited for the clock alone. */
  readonly isOnlyLater: boolean;
}

/** An order that is later than was said: the new time is on record as its promise from now on. */
export interface Slip {
  readonly order: OrderRow;
  readonly promisedBeforeAt: Instant | null;
  /** Null when it is not ready before the truck leaves. */
  readonly promiseAt: Instant | null;
  readonly cause: SlipCause;
}

export interface Applied {
  /** Orders whose cards show other times now. */
  readonly moved: readonly OrderRow[];
  readonly slips: readonly Slip[];
}

const MS_PER_MIN = 60_000;
const SLIP_MS = 5 * MS_PER_MIN;
/** A post is edited for a time that moved this much. */
const SHOWN_MS = 2 * MS_PER_MIN;
/** Without a press since the last call there is little new to tell: two hours are. */
const QUIET_MS = 120 * MS_PER_MIN;

/** Whether two times read differently enough on a card. */
const differs = (a: Instant | null, b: Instant | null): boolean => (a === null || b === null ? a !== b : Math.abs(a - b) >= SHOWN_MS);

/** Later than the promise in force by the length of a slip; or past what was wanted while the promise was not. */
function isLate(order: OrderRow, likelyAt: Instant | null): boolean {
  const { givenPromiseAt: promised, byAt } = order;
  if (promised === null) {
    return false;
  }
  if (likelyAt === null) {
    return true;
  }
  return likelyAt - promised >= SLIP_MS || (byAt !== null && promised <= byAt && likelyAt - byAt >= SLIP_MS);
}

/** One slip is one call: another needs a press on the bench since the last, or two hours. */
function isNews(tx: Tx, order: OrderRow, { now, version }: BenchSnapshot): boolean {
  const told = promisesOf(tx, order.id).findLast(({ cause }) => cause === "slipped");
  return told === undefined || version !== order.toldLateVersion || now - told.at >= QUIET_MS;
}

function slipOf(tx: Tx, order: OrderRow, times: OrderTimes, snapshot: BenchSnapshot): Slip | null {
  const { likelyAt } = times;
  if (!isLate(order, likelyAt) || !isNews(tx, order, snapshot)) {
    return null;
  }
  const cause = slipCause(tx, snapshot, order, likelyAt);
  const latest = Math.max(times.promiseAt ?? 0, likelyAt ?? 0);
  const promiseAt = latest === 0 ? null : instant(latest);
  givePromise(tx, order, "slipped", { likelyAt, promiseAt }, snapshot.now);
  noteOnOrder(tx, order.id, { givenPromiseAt: promiseAt, toldLateAt: promiseAt, toldLateVersion: snapshot.version });
  return { order: orderById(tx, order.id) ?? order, promisedBeforeAt: order.givenPromiseAt, promiseAt, cause };
}

function noteClubs(tx: Tx, order: OrderRow, times: readonly ReadyEstimate[]): void {
  for (const [job, { id, likelyAt }] of sheetsOf(tx, order).entries()) {
    const own = times.find((time) => time.order === order.id && time.job === job);
    if (own !== undefined && differs(own.likelyAt, likelyAt)) {
      noteOnSheet(tx, id, { likelyAt: own.likelyAt, promiseAt: own.promiseAt, playableAt: own.playableAt });
    }
  }
}

/** A promise that could not be given before, or that was taken back, is given as soon as there is one. */
function promiseAfterAll(tx: Tx, order: OrderRow, times: OrderTimes, now: Instant): boolean {
  if (order.givenPromiseAt !== null || times.promiseAt === null) {
    return false;
  }
  const isTakenBack = promisesOf(tx, order.id).some(({ revision }) => revision === order.revision);
  givePromise(tx, order, isTakenBack ? "slipped" : order.clubInAt === null ? "confirmed" : "arrived", times, now);
  noteOnOrder(tx, order.id, { givenPromiseAt: times.promiseAt });
  return true;
}

/** New times of one order; those of its clubs with them. */
function applyTo(tx: Tx, order: OrderRow, { times, snapshot, isOnlyLater }: BenchEstimate): { readonly moved: boolean; readonly slip: Slip | null } {
  const own = timesOf(times, order.id);
  const isKept = snapshot.jobs.some((job) => job.order === order.id && (job.held || job.releaseAt !== null));
  const slip = isKept ? null : slipOf(tx, order, own, snapshot);
  const isPromised = !isKept && !isOnlyLater && promiseAfterAll(tx, order, own, snapshot.now);
  /** What was said to come has not: its time is no more. */
  const isLapsed = isKept && own.likelyAt === null && order.likelyAt !== null;
  const moved =
    slip !== null || isPromised || isLapsed || (!isOnlyLater && (differs(own.likelyAt, order.likelyAt) || differs(own.playableAt, order.playableAt)));
  if (moved) {
    noteOnOrder(tx, order.id, { likelyAt: own.likelyAt, playableAt: own.playableAt });
  }
  noteClubs(tx, order, times);
  return { moved, slip };
}

/**
 * Puts an estimate of a whole bench on record: the times of every open order and club, how the bench is run, and the slips it shows.
 *
 * @param tx - a transaction in which the bench is still as it was estimated
 */
export function applyEstimate(tx: Tx, truckId: Id<"truck">, estimate: BenchEstimate): Applied {
  const { snapshot, policy } = estimate;
  noteEstimated(tx, truckId, { estimatedVersion: snapshot.version, estimatedAt: snapshot.now, policy: JSON.stringify(policy) });
  const open = ordersIn(tx, truckId, benchStates);
  const applied = open.map((order) => ({ order, ...applyTo(tx, order, estimate) }));
  return {
    moved: applied.flatMap(({ order, moved }) => (moved ? [orderById(tx, order.id) ?? order] : [])),
    slips: applied.flatMap(({ slip }) => slip ?? []),
  };
}
