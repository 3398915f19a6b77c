import type { Instant } from "../../core/kinds.ts";
import { addPromise, type PromiseRow } from "../../db/repositories/benchEstimates.ts";
import { benchVersion, type OrderRow } from "../../db/repositories/orders.ts";
import type { Tx } from "../../db/write.ts";
import { techniciansAt } from "./crew.ts";
import { policyInForce } from "./policyInForce.ts";

/** Puts a promise on record with what it rests on: the bench's version, its rule, and how many hands there were. */
export function givePromise(
  tx: Tx,
  order: Pick<OrderRow, "id" | "revision" | "truckId">,
  cause: PromiseRow["cause"],
  times: { readonly likelyAt: Instant | null; readonly promiseAt: Instant | null },
  at: Instant,
): void {
  const hands = techniciansAt(tx, order.truckId).filter(({ away }) => !away.some(({ from, to }) => from <= at && at < to));
  addPromise(tx, {
    orderId: order.id,
    revision: order.revision,
    at,
    cause,
    likelyAt: times.likelyAt,
    promiseAt: times.promiseAt,
    benchVersion: benchVersion(tx, order.truckId),
    rule: policyInForce(tx, order.truckId).rule,
    technicians: hands.length,
  });
}
