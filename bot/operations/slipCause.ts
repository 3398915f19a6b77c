import type { BenchSnapshot, StepKind } from "../../core/bench/benchTypes.ts";
import type { Instant } from "../../core/kinds.ts";
import { promisesOf } from "../../db/repositories/benchEstimates.ts";
import { pressesOf } from "../../db/repositories/benchPresses.ts";
import { type OrderRow, orderById } from "../../db/repositories/orders.ts";
import type { Reader } from "../../db/write.ts";

/** Why an order is later than was said. */
export type SlipCause =
  | { readonly kind: "fewerHands"; readonly now: number; readonly before: number }
  | { readonly kind: "slowStep"; readonly step: StepKind; readonly overMin: number }
  /** Somebody has laid it aside. */
  | { readonly kind: "resting"; readonly since: Instant }
  /** Nothing was pressed for so long that a press is missing rather than the work slow. */
  | { readonly kind: "noPress"; readonly since: Instant }
  /** Orders that came after the promise and go first. */
  | { readonly kind: "behind"; readonly numbers: readonly number[] }
  /** It is not ready before the workshop closes. */
  | { readonly kind: "closed" }
  | { readonly kind: "notStarted" | "bench" };

const MS_PER_MIN = 60_000;
const LEAST_OVER_MIN = 3;
const MISSING_MIN = 30;
const MOST_NAMED = 3;

function slowStep(reader: Reader, snapshot: BenchSnapshot, order: OrderRow): SlipCause | null {
  const over = snapshot.jobs
    .filter((job) => job.order === order.id)
    .flatMap(({ steps }) =>
      steps.flatMap(({ state, startedAt, workedMs, route }) =>
        state === "running" && startedAt !== null && !route.unattended
          ? [{ step: route.kind, overMin: (snapshot.now - startedAt + workedMs) / MS_PER_MIN - route.medianMin }]
          : [],
      ),
    )
    .toSorted((a, b) => b.overMin - a.overMin)[0];
  if (over === undefined || over.overMin < LEAST_OVER_MIN) {
    return null;
  }
  return over.overMin >= MISSING_MIN ? (noPress(reader, snapshot, order) ?? { kind: "slowStep", ...over }) : { kind: "slowStep", ...over };
}

/** Nothing was pressed on it for half an hour. */
function noPress(reader: Reader, { now }: BenchSnapshot, order: OrderRow): SlipCause | null {
  const last = pressesOf(reader, order.id).at(-1);
  return last !== undefined && now - last.at >= MISSING_MIN * MS_PER_MIN ? { kind: "noPress", since: last.at } : null;
}

function resting(reader: Reader, order: OrderRow): SlipCause | null {
  const last = pressesOf(reader, order.id).at(-1);
  return order.state === "confirmed" || (last?.press !== "pause" && last?.press !== "handBack") ? null : { kind: "resting", since: last.at };
}

function behind(reader: Reader, snapshot: BenchSnapshot, order: OrderRow, promisedAt: Instant): SlipCause | null {
  const own = snapshot.jobs.find((job) => job.order === order.id)?.weight ?? 1;
  const ahead = [...new Set(snapshot.jobs.filter((job) => job.order !== order.id && !job.held).map((job) => job.order))].flatMap((id) => {
    const other = orderById(reader, id);
    const since = other === null ? undefined : promisesOf(reader, id)[0]?.at;
    const weight = snapshot.jobs.find((job) => job.order === id)?.weight ?? 1;
    const isSooner = other !== null && (weight > own || (other.byAt ?? Number.POSITIVE_INFINITY) < (order.byAt ?? Number.POSITIVE_INFINITY));
    return other !== null && since !== undefined && since > promisedAt && isSooner ? [other.number] : [];
  });
  return ahead.length === 0 ? null : { kind: "behind", numbers: ahead.slice(0, MOST_NAMED) };
}

/**
 * Finds why an order slips, the nearest cause first: fewer hands than when it was promised, laid aside, its own step over its time, orders
 * that came after and go first, closing time; else that it has not been started, nothing was pressed on it, or the bench is slower than thought.
 */
export function slipCause(reader: Reader, snapshot: BenchSnapshot, order: OrderRow, likelyAt: Instant | null): SlipCause {
  const promised = promisesOf(reader, order.id).findLast(({ revision }) => revision === order.revision);
  const hands = snapshot.technicians.filter(({ away }) => !away.some(({ from, to }) => from <= snapshot.now && snapshot.now < to)).length;
  if (promised !== undefined && hands < promised.technicians) {
    return { kind: "fewerHands", now: hands, before: promised.technicians };
  }
  const own =
    resting(reader, order) ?? slowStep(reader, snapshot, order) ?? (promised === undefined ? null : behind(reader, snapshot, order, promised.at));
  if (own !== null) {
    return own;
  }
  const closesAt = snapshot.open.find(({ from, to }) => from <= snapshot.now && snapshot.now < to)?.to;
  if (likelyAt === null || closesAt === undefined || likelyAt > closesAt) {
    return { kind: "closed" };
  }
  return order.state === "confirmed" ? { kind: "notStarted" } : (noPress(reader, snapshot, order) ?? { kind: "bench" });
}
