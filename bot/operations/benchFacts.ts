import type { ScheduledStep } from "../../core/bench/benchSimulation.ts";
import type { BenchSnapshot } from "../../core/bench/benchTypes.ts";
import { medianDay } from "../../core/bench/medianDay.ts";
import { type NextWork, nextWork } from "../../core/bench/nextWork.ts";
import type { Policy } from "../../core/bench/policy.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { pressesOf } from "../../db/repositories/benchPresses.ts";
import { benchStates, ordersIn } from "../../db/repositories/orders.ts";
import { allTrucks, currentEvent, personName } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { benchSnapshot } from "./benchSnapshot.ts";
import { learnedPace } from "./learnedPace.ts";
import { type OrderFacts, orderFacts } from "./orderFacts.ts";
import { policyInForce } from "./policyInForce.ts";
import { isResting } from "./restStep.ts";

/** One technician with what is next for them. */
export interface NextFacts extends NextWork {
  readonly name: string;
}

/** A truck's bench as it is run now: what is next for whom, and the rest of the day at medians. */
export interface BenchFacts {
  readonly truck: string;
  readonly zone: string;
  readonly now: Instant;
  readonly snapshot: BenchSnapshot;
  readonly policy: Policy;
  readonly next: readonly NextFacts[];
  readonly day: readonly ScheduledStep[];
  readonly orders: readonly OrderFacts[];
  /** Orders that rest between Pause or Hand back and Resume. */
  readonly resting: ReadonlySet<Id<"order">>;
}

/** Reads what a truck's bench does now and next. */
export function benchFacts(reader: Reader, truckId: Id<"truck">, now: Instant): BenchFacts {
  const snapshot = benchSnapshot(reader, truckId, now, null);
  const policy = policyInForce(reader, truckId);
  const question = { snapshot, policy, pace: learnedPace(reader) };
  const open = ordersIn(reader, truckId, benchStates);
  return {
    truck: allTrucks(reader).find(({ id }) => id === truckId)?.name ?? "",
    zone: currentEvent(reader, truckId, now)?.event.zone ?? "UTC",
    now,
    snapshot,
    policy,
    next: nextWork(question).map((one) => ({ ...one, name: personName(reader, one.person) })),
    day: medianDay(question),
    orders: open.map((order) => orderFacts(reader, order, now)),
    resting: new Set(open.filter(({ id }) => isResting(pressesOf(reader, id))).map(({ id }) => id)),
  };
}
