import type { Id, Instant } from "../../core/kinds.ts";
import { noteOnOrder, type OrderRow, requestOf } from "../../db/repositories/orders.ts";
import type { Tx } from "../../db/write.ts";
import { redraftOrder } from "./draftOrder.ts";
import { planOrder } from "./planOrder.ts";

/**
 * Plans a confirmed order anew because a part it held is gone: it gives back what it still holds and is a draft again,
 * under its number, for its rep to look at and press Go.
 *
 * @param tx - the transaction that found the part gone
 * @param order - confirmed, its first step not begun
 * @param by - who found it, and when
 */
export function replanOrder(
  tx: Tx,
  order: OrderRow,
  by: { readonly personId: Id<"person">; readonly now: Instant },
): { readonly order: OrderRow; readonly canBeBuilt: boolean } {
  const { request, asWritten } = requestOf(tx, order);
  const planned = planOrder(tx, { request, truckId: order.truckId, now: by.now, replaces: order.id });
  const drafted = redraftOrder(tx, order, { request, asWritten, planned, byAt: order.byAt, ...by });
  noteOnOrder(tx, drafted.id, { likelyAt: null, givenPromiseAt: null, playableAt: null });
  return { order: drafted, canBeBuilt: planned.every(({ faults }) => faults.length === 0) };
}
