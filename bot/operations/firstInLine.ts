import { changeOrder, type OrderRow, type OrderState, touchBench } from "../../db/repositories/orders.ts";
import type { Tx } from "../../db/write.ts";

export type PutFirst = { readonly kind: "first" | "already" | "refused"; readonly order: OrderRow };

const movable: readonly OrderState[] = ["confirmed", "building", "finalCheck"];

/** Has an order done before others from now on, as if its player waited on the range. */
export function firstInLine(tx: Tx, order: OrderRow): PutFirst {
  if (!movable.includes(order.state)) {
    return { kind: "refused", order };
  }
  if (order.urgent) {
    return { kind: "already", order };
  }
  touchBench(tx, order.truckId);
  return { kind: "first", order: changeOrder(tx, order.id, { urgent: true }) };
}
