import { type PromiseKept, type PromiseRecord, promiseRecord } from "../../core/bench/promiseRecord.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { allPromises, promisesOf } from "../../db/repositories/benchEstimates.ts";
import { pressesOf } from "../../db/repositories/benchPresses.ts";
import { benchStates, type OrderRow, orderById, requestOf } from "../../db/repositories/orders.ts";
import { eventById } from "../../db/repositories/people.ts";
import { type SheetRow, type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";
import { awaitsClub } from "./awaitsClub.ts";

/** A promise that came due, with the order it was given for. */
interface KeptRow extends PromiseKept {
  readonly orderNumber: number;
  readonly week: string;
}

export interface PromiseRecordFacts {
  /** Newest week first; a week without a promise that came due is not among them. */
  readonly weeks: readonly { readonly week: string; readonly record: PromiseRecord<KeptRow> }[];
  readonly all: PromiseRecord<KeptRow>;
  /** Promised and not in hand yet; how many of them are past their promise; how many held or without their club. */
  readonly openCount: number;
  readonly overdueCount: number;
  readonly heldCount: number;
}

const MS_PER_MIN = 60_000;

const ofKind = (sheets: readonly SheetRow[], kind: string): readonly StepRow[] =>
  sheets.flatMap(({ steps }) => steps.filter((step) => step.kind === kind));

/** When the last of some steps was done; null while one is not, or when there is none. */
function lastDoneAt(steps: readonly StepRow[]): Instant | null {
  const done = steps.flatMap(({ finishedAt, state }) => (state === "done" && finishedAt !== null ? [finishedAt] : []));
  return done.length === 0 || done.length < steps.length ? null : instant(Math.max(...done));
}

/** In hand: the final check passed and the walk done as planned, or handed over before that. */
function inHandAt(reader: Reader, order: OrderRow, since: Instant): Instant | null {
  const sheets = sheetsOf(reader, order);
  const checked = pressesOf(reader, order.id).find(({ press, at }) => press === "checked" && at >= since)?.at ?? lastDoneAt(ofKind(sheets, "sign"));
  const walkMin = ofKind(sheets, "walk").reduce((longest, { route }) => Math.max(longest, route.medianMin), 0);
  const handedOver = lastDoneAt(ofKind(sheets, "walk"));
  if (checked === null) {
    return handedOver;
  }
  return instant(Math.min(checked + walkMin * MS_PER_MIN, handedOver ?? Number.POSITIVE_INFINITY));
}

type Standing = { readonly kind: "kept"; readonly row: KeptRow } | { readonly kind: "open" | "overdue" | "held" };

/** The promise that counts was given with the order's newest confirmation, or when its club came in; a new time told for a slip does not. */
function standingOf(reader: Reader, order: OrderRow, now: Instant): Standing | null {
  const given = promisesOf(reader, order.id).findLast(({ cause }) => cause !== "slipped");
  if (given?.promiseAt == null) {
    return null;
  }
  const arrivedAt = inHandAt(reader, order, given.at);
  if (arrivedAt !== null) {
    const week = eventById(reader, order.eventId)?.name ?? "";
    return { kind: "kept", row: { promiseAt: given.promiseAt, likelyAt: given.likelyAt, inHandAt: arrivedAt, orderNumber: order.number, week } };
  }
  if (!benchStates.includes(order.state)) {
    return null;
  }
  const isHeld = order.heldReason !== null || awaitsClub(requestOf(reader, order).request, order);
  return { kind: isHeld ? "held" : given.promiseAt < now ? "overdue" : "open" };
}

/**
 * Reads a truck's promises against what was kept, week by week.
 *
 * @param reader - database or transaction
 * @param truckId - whose promises
 * @param now - the moment
 */
export function promiseRecordFacts(reader: Reader, truckId: Id<"truck">, now: Instant): PromiseRecordFacts {
  const promised = [...new Set(allPromises(reader).map(({ orderId }) => orderId))];
  const standings = promised.flatMap((orderId) => {
    const order = orderById(reader, orderId);
    return order === null || order.truckId !== truckId ? [] : (standingOf(reader, order, now) ?? []);
  });
  const kept = standings.flatMap((one) => (one.kind === "kept" ? [one.row] : []));
  const count = (kind: Standing["kind"]): number => standings.filter((one) => one.kind === kind).length;
  const weeks = [...new Set(kept.toReversed().map(({ week }) => week))];
  return {
    weeks: weeks.map((week) => ({ week, record: promiseRecord(kept.filter((row) => row.week === week)) })),
    all: promiseRecord(kept),
    openCount: count("open") + count("overdue"),
    overdueCount: count("overdue"),
    heldCount: count("held"),
  };
}
