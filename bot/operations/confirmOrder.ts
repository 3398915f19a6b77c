import type { Id, Instant } from "../../core/kinds.ts";
import { changeOrder, confirmRevision, type OrderRow, orderById, touchBench } from "../../db/repositories/orders.ts";
import type { Tx } from "../../db/write.ts";
import { givePromise } from "./givePromise.ts";
import { holdParts } from "./holdParts.ts";
import { moveSheets } from "./moveSheets.ts";
import type { OrderTimes } from "./orderTimes.ts";
import { PlanMoved } from "./planMoved.ts";

export type Confirmation =
  /** `moved`: confirmed orders that take another head for it, no further from what was written. */
  | { readonly kind: "confirmed"; readonly order: OrderRow; readonly moved: readonly OrderRow[] }
  | { readonly kind: "stale" | "already"; readonly order: OrderRow }
  /** A part of the plan is no longer free: the draft must be planned anew and shown again. */
  | { readonly kind: "plan-moved"; readonly order: OrderRow; readonly parts: readonly string[] };

/**
 * Confirms a draft: its parts are held for it, its steps stand on the bench, its promise is on record.
 *
 * @param tx - the transaction
 * @param orderId - which draft
 * @param seen - the version the person saw
 * @param times - likely, promise and playable as estimated on the bench's version
 * @param now - the moment: a promise is put on record
 * @throws {PlanMoved} when a part is no longer free; nothing of the transaction may stay
 */
export function confirmOrder(
  tx: Tx,
  orderId: Id<"order">,
  seen: number,
  times: OrderTimes,
  now: Instant,
): Exclude<Confirmation, { kind: "plan-moved" }> {
  const order = orderById(tx, orderId);
  if (order === null) {
    throw new Error(`no order ${orderId}`);
  }
  if (order.state !== "draft") {
    return { kind: "already", order };
  }
  if (order.version !== seen) {
    return { kind: "stale", order };
  }
  const moved = moveSheets(tx, order);
  const gone = holdParts(tx, order);
  if (gone.length > 0) {
    throw new PlanMoved(gone);
  }
  confirmRevision(tx, order);
  touchBench(tx, order.truckId);
  const { likelyAt, promiseAt, playableAt } = times;
  const confirmed = changeOrder(tx, order.id, { state: "confirmed", likelyAt, givenPromiseAt: promiseAt, playableAt });
  if (promiseAt !== null) {
    givePromise(tx, confirmed, "confirmed", times, now);
  }
  return { kind: "confirmed", order: confirmed, moved };
}
