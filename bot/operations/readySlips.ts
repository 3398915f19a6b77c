import type { ReadyEstimate } from "../../core/bench/benchTypes.ts";
import type { Instant } from "../../core/kinds.ts";
import { type OrderRow, orderById } from "../../db/repositories/orders.ts";
import type { Reader } from "../../db/write.ts";
import { extraOrder } from "./benchExtra.ts";
import { timesOf } from "./orderTimes.ts";

/** An open order that one more on the bench would make later, or sooner. */
export interface ReadySlip {
  readonly order: OrderRow;
  readonly beforeAt: Instant | null;
  readonly afterAt: Instant | null;
  /** Past what was promised, or past what was wanted, while it was not before. */
  readonly missesAt: Instant | null;
}

const MS_PER_MIN = 60_000;

function missed(order: OrderRow, beforeAt: Instant | null, afterAt: Instant | null): Instant | null {
  const walls = [order.byAt, order.givenPromiseAt].flatMap((at) => at ?? []).toSorted((a, b) => a - b);
  return walls.find((wall) => beforeAt !== null && beforeAt <= wall && (afterAt === null || afterAt > wall)) ?? null;
}

/** Whose promise moves by a minute or more when one order more is on the bench, with the same luck. */
export function readySlips(reader: Reader, before: readonly ReadyEstimate[], after: readonly ReadyEstimate[]): readonly ReadySlip[] {
  const orders = [...new Set(before.map(({ order }) => order))].filter((order) => order !== extraOrder);
  return orders.flatMap((id) => {
    const beforeAt = timesOf(before, id).promiseAt;
    const afterAt = timesOf(after, id).promiseAt;
    const order = orderById(reader, id);
    const isSame = beforeAt === afterAt || (beforeAt !== null && afterAt !== null && Math.abs(afterAt - beforeAt) < MS_PER_MIN);
    return order === null || isSame ? [] : [{ order, beforeAt, afterAt, missesAt: missed(order, beforeAt, afterAt) }];
  });
}
