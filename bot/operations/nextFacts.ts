import type { BenchSnapshot, StepKind, StepRef } from "../../core/bench/benchTypes.ts";
import { type NextWhy, nextWork, type TimedStep } from "../../core/bench/nextWork.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { benchStates, ordersIn } from "../../db/repositories/orders.ts";
import { currentEvent, personName } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { benchSnapshot } from "./benchSnapshot.ts";
import { learnedPace } from "./learnedPace.ts";
import { type OrderFacts, orderFacts } from "./orderFacts.ts";
import { policyInForce } from "./policyInForce.ts";

/** One step on somebody's way: of which order, and which of its clubs. */
export interface NextStep {
  readonly order: OrderFacts;
  /** Place among the order's clubs. */
  readonly job: number;
  readonly kind: StepKind;
  readonly startAt: Instant;
  readonly endAt: Instant;
}

/** What one technician should do now and why, with what fits into the wait. */
export interface TechnicianNext {
  readonly person: Id<"person">;
  readonly name: string;
  readonly now: NextStep | null;
  readonly why: NextWhy;
  /** The order that the next work waits for, where there is nothing to do till then. */
  readonly waitsFor: OrderFacts | null;
  /** What sets when the step in hand is over, and till when. */
  readonly wait: { readonly kind: StepKind; readonly till: Instant } | null;
  readonly meanwhile: readonly NextStep[];
  /** Orders under way in their hands. */
  readonly inHand: readonly OrderFacts[];
}

export interface NextFacts {
  readonly zone: string;
  readonly technicians: readonly TechnicianNext[];
}

/** The wait of a club that runs already, or that a step begins. */
function waitOf(snapshot: BenchSnapshot, { step, kind }: TimedStep): StepKind | null {
  const steps = snapshot.jobs.find(({ order, job }) => order === step.order && job === step.job)?.steps ?? [];
  const waits = steps.filter(({ route }) => route.unattended && route.kind !== "walk");
  const wait = waits.find(({ state }) => state === "running") ?? waits.find(({ state, route }) => state === "todo" && route.after.includes(kind));
  return wait?.route.kind ?? null;
}

/**
 * Reads what every technician of a truck should do now, as its bench is run and as quick as its work was learned to be.
 *
 * @param reader - database or transaction
 * @param truckId - whose bench
 * @param now - the moment
 */
export function nextFacts(reader: Reader, truckId: Id<"truck">, now: Instant): NextFacts {
  const snapshot = benchSnapshot(reader, truckId, now, null);
  const orders = new Map(ordersIn(reader, truckId, benchStates).map((order) => [order.id, orderFacts(reader, order, now)]));
  const stepOf = ({ step, kind, startAt, endAt }: TimedStep & { readonly step: StepRef }): readonly NextStep[] => {
    const order = orders.get(step.order);
    return order === undefined ? [] : [{ order, job: step.job, kind, startAt, endAt }];
  };
  const technicians = nextWork({ snapshot, policy: policyInForce(reader, truckId), pace: learnedPace(reader) }).map((next): TechnicianNext => {
    const waitKind = next.now === null ? null : waitOf(snapshot, next.now);
    return {
      person: next.person,
      name: personName(reader, next.person),
      now: next.now === null ? null : (stepOf(next.now)[0] ?? null),
      why: next.why,
      waitsFor: next.why.kind === "waiting" ? (orders.get(next.why.order) ?? null) : null,
      wait: waitKind === null || next.waitEndsAt === null ? null : { kind: waitKind, till: next.waitEndsAt },
      meanwhile: next.meanwhile.flatMap(stepOf),
      inHand: [...orders.values()].filter(({ atBench }) => atBench.hands?.person === next.person),
    };
  });
  return { zone: currentEvent(reader, truckId, now)?.event.zone ?? "UTC", technicians };
}
