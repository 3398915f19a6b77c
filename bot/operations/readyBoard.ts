import type { ScheduledStep } from "../../core/bench/benchSimulation.ts";
import type { BenchSnapshot, OpenInterval, Station, StepKind } from "../../core/bench/benchTypes.ts";
import { medianDay } from "../../core/bench/medianDay.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { benchStates, ordersIn } from "../../db/repositories/orders.ts";
import { allTrucks, currentEvent, personName } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { benchSnapshot } from "./benchSnapshot.ts";
import { learnedPace } from "./learnedPace.ts";
import { type OrderFacts, orderFacts } from "./orderFacts.ts";
import { policyInForce } from "./policyInForce.ts";

/** A stretch of work on one order, or of one of its waits. */
export interface BoardBar {
  readonly order: Id<"order">;
  readonly orderNumber: number;
  readonly fromAt: Instant;
  readonly toAt: Instant;
  /** What is done first in it. */
  readonly kind: StepKind;
  readonly underWay: boolean;
}

/** The rest of the working day at a truck's bench if everything takes its median. */
export interface ReadyBoardFacts {
  readonly truck: string;
  readonly zone: string;
  readonly now: Instant;
  readonly from: Instant;
  readonly to: Instant;
  readonly rollOutAt: Instant | null;
  readonly closed: readonly OpenInterval[];
  readonly technicians: readonly { readonly name: string; readonly bars: readonly BoardBar[] }[];
  /** A station that holds several clubs at once has a row for each. */
  readonly stations: readonly { readonly station: Station; readonly bars: readonly BoardBar[] }[];
  /** Glue and grips that set, as many rows as set at once. */
  readonly waits: readonly (readonly BoardBar[])[];
  readonly orders: readonly OrderFacts[];
}

const MS_PER_MIN = 60_000;
/** How much of the past is shown. */
const PAST_MS = 15 * MS_PER_MIN;
const LEAST_MS = 60 * MS_PER_MIN;
/** A shorter gap between openings is a break of the same day. */
const BREAK_MS = 4 * 60 * MS_PER_MIN;

/** The openings of the working day at hand, or of the next. */
function dayOf({ open, now }: BenchSnapshot): readonly OpenInterval[] {
  const toCome = open.filter(({ to }) => to > now).toSorted((a, b) => a.from - b.from);
  const end = toCome.findIndex(({ to }, at) => (toCome[at + 1]?.from ?? Number.POSITIVE_INFINITY) - to >= BREAK_MS);
  return toCome.slice(0, end + 1);
}

function windowOf(snapshot: BenchSnapshot, day: readonly ScheduledStep[], promises: readonly Instant[]): OpenInterval {
  const { now, rollOutAt } = snapshot;
  const hours = dayOf(snapshot);
  const opensAt = hours[0]?.from ?? now;
  const closesAt = Math.min(hours.at(-1)?.to ?? Number.POSITIVE_INFINITY, rollOutAt ?? Number.POSITIVE_INFINITY);
  const begun = day.flatMap(({ underWay, startAt }) => (underWay && startAt !== null ? [startAt] : []));
  const from = Math.max(opensAt, now - PAST_MS, Math.min(now, ...begun));
  const last = Math.max(...[...day.flatMap(({ endAt }) => endAt ?? []), ...promises].filter((at) => at <= closesAt), from + LEAST_MS);
  return { from: instant(from), to: instant(Math.max(from + MS_PER_MIN, Math.min(closesAt, last + 5 * MS_PER_MIN))) };
}

/** What lies between openings within a window. */
function closedIn({ from, to }: OpenInterval, open: readonly OpenInterval[]): readonly OpenInterval[] {
  return open.reduce<readonly OpenInterval[]>(
    (gaps, hours) =>
      gaps.flatMap((gap) =>
        [
          { from: gap.from, to: instant(Math.min(gap.to, hours.from)) },
          { from: instant(Math.max(gap.from, hours.to)), to: gap.to },
        ].filter((part) => part.from < part.to),
      ),
    [{ from, to }],
  );
}

const byStart = (a: BoardBar, b: BoardBar): number => a.fromAt - b.fromAt;

/** Bars one after another, those of one order that touch joined. */
function joined(bars: readonly BoardBar[]): readonly BoardBar[] {
  const all: BoardBar[] = [];
  for (const bar of bars.toSorted(byStart)) {
    const last = all.at(-1);
    if (last !== undefined && last.order === bar.order && bar.fromAt <= last.toAt) {
      all.splice(-1, 1, { ...last, toAt: instant(Math.max(last.toAt, bar.toAt)), underWay: last.underWay || bar.underWay });
    } else {
      all.push(bar);
    }
  }
  return all;
}

/** As few rows as hold bars that overlap. */
function inRows(bars: readonly BoardBar[]): readonly (readonly BoardBar[])[] {
  const rows: BoardBar[][] = [];
  for (const bar of bars.toSorted(byStart)) {
    const free = rows.find((row) => (row.at(-1)?.toAt ?? 0) <= bar.fromAt);
    if (free === undefined) {
      rows.push([bar]);
    } else {
      free.push(bar);
    }
  }
  return rows;
}

/** What a step looks like within the window; nothing when it lies outside, or when only the press that ends it is missing. */
function barOf(step: ScheduledStep, orderNumber: number | undefined, { from, to }: OpenInterval, now: Instant): readonly BoardBar[] {
  const { order, route, startAt, endAt, underWay } = step;
  if (orderNumber === undefined || startAt === null || endAt === null || endAt <= Math.max(from, now) || startAt >= to || startAt === endAt) {
    return [];
  }
  const [fromAt, toAt] = [instant(Math.max(startAt, from)), instant(Math.min(endAt, to))];
  return [{ order, orderNumber, fromAt, toAt, kind: route.kind, underWay }];
}

/**
 * Reads the rest of the working day at a truck's bench: who does what when, what sets, what was promised.
 *
 * @param reader - database or transaction
 * @param truckId - whose bench
 * @param now - the moment
 */
export function readyBoard(reader: Reader, truckId: Id<"truck">, now: Instant): ReadyBoardFacts {
  const snapshot = benchSnapshot(reader, truckId, now, null);
  const day = medianDay({ snapshot, policy: policyInForce(reader, truckId), pace: learnedPace(reader) });
  const orders = ordersIn(reader, truckId, benchStates).map((order) => orderFacts(reader, order, now));
  const numbers = new Map(orders.map(({ order, number }) => [order, number]));
  const window = windowOf(
    snapshot,
    day,
    orders.flatMap(({ promiseAt }) => promiseAt ?? []),
  );
  const barsOf = (steps: readonly ScheduledStep[]): readonly BoardBar[] => steps.flatMap((step) => barOf(step, numbers.get(step.order), window, now));
  const work = day.filter(({ route }) => !route.unattended);
  const stations = [...new Set(work.map(({ route }) => route.station))];
  return {
    truck: allTrucks(reader).find(({ id }) => id === truckId)?.name ?? "",
    zone: currentEvent(reader, truckId, now)?.event.zone ?? "UTC",
    now,
    ...window,
    rollOutAt: snapshot.rollOutAt,
    closed: closedIn(window, snapshot.open),
    technicians: snapshot.technicians.map(({ person }) => ({
      name: personName(reader, person),
      bars: joined(barsOf(work.filter((step) => step.person === person))),
    })),
    stations: stations.flatMap((station) =>
      inRows(barsOf(work.filter(({ route }) => route.station === station))).map((row) => ({ station, bars: joined(row) })),
    ),
    waits: inRows(barsOf(day.filter(({ route }) => route.unattended && route.kind !== "walk"))),
    orders,
  };
}
