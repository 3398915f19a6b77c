import { type PromiseKept, type PromiseRecord, promiseRecord } from "../../core/bench/promiseRecord.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { allPromises } from "../../db/repositories/benchEstimates.ts";
import { pressesOf } from "../../db/repositories/benchPresses.ts";
import { type OrderRow, orderById } from "../../db/repositories/orders.ts";
import { eventById } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";

interface KeptRow extends PromiseKept {
  readonly number: number;
  readonly event: string;
  readonly eventId: Id<"event">;
}

/** Promised against kept: in all, and week by week. */
export interface PromiseFacts {
  readonly all: PromiseRecord<KeptRow>;
  readonly weeks: readonly { readonly event: string; readonly record: PromiseRecord<KeptRow> }[];
  /** Promises whose club is not in hand yet. */
  readonly openCount: number;
}

const MS_PER_MIN = 60_000;

/** When a club was in hand: its final check passed, and the walk; null before that. */
function inHandAt(reader: Reader, order: OrderRow): Instant | null {
  const checked = pressesOf(reader, order.id).find(({ press }) => press === "checked");
  if (checked === undefined) {
    return null;
  }
  const walkMin = Math.max(
    0,
    ...sheetsOf(reader, order).flatMap(({ steps }) => steps.flatMap(({ kind, route }) => (kind === "walk" ? [route.medianMin] : []))),
  );
  return instant(checked.at + walkMin * MS_PER_MIN);
}

/** Reads the promises a truck gave and how they were kept: the one of each order's newest revision, not those told for a slip. */
export function promiseFacts(reader: Reader, truckId: Id<"truck">): PromiseFacts {
  const given = new Map(allPromises(reader).flatMap((row) => (row.cause === "slipped" ? [] : [[row.orderId, row] as const])));
  let openCount = 0;
  const rows = [...given.values()].flatMap(({ orderId, revision, promiseAt, likelyAt }): readonly KeptRow[] => {
    const order = orderById(reader, orderId);
    if (order === null || order.truckId !== truckId || promiseAt === null || order.state === "withdrawn" || order.revision !== revision) {
      return [];
    }
    const at = inHandAt(reader, order);
    if (at === null) {
      openCount += 1;
      return [];
    }
    return [{ promiseAt, likelyAt, inHandAt: at, number: order.number, eventId: order.eventId, event: eventById(reader, order.eventId)?.name ?? "" }];
  });
  const weeks = [...new Set(rows.map(({ eventId }) => eventId))].map((eventId) => {
    const own = rows.filter((row) => row.eventId === eventId);
    return { event: own[0]?.event ?? "", record: promiseRecord(own) };
  });
  return { all: promiseRecord(rows), weeks, openCount };
}
