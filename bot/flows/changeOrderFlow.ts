import { type OrderRow, orderById } from "../../db/repositories/orders.ts";
import type { Tx } from "../../db/write.ts";
import type { Context } from "../chat/context.ts";
import type { Json, Reply } from "../chat/types.ts";
import { staleNote } from "../replies/orderNotes.ts";
import { findOrder } from "./findOrder.ts";
import { orderPosts } from "./orderPosts.ts";

export interface OrderChange {
  /** The order after the change, or as it was when nothing changed. */
  readonly order: OrderRow;
  readonly reply: Reply | null;
  readonly changed: boolean;
  /** What the record says of the change beside the order's state. */
  readonly detail?: { readonly [name: string]: Json };
}

/**
 * Changes one order in one transaction: a stale press changes nothing and says so; what changed is shown and recorded.
 *
 * @param context - of the command
 * @param written - the order as named
 * @param version - the version a button was made for, or null for a typed line
 * @param action - for the record
 * @param work - the change
 */
export function changeOrderFlow(
  context: Context,
  written: string,
  version: number | null,
  action: string,
  work: (tx: Tx, order: OrderRow) => OrderChange,
): Reply | null {
  return context.commit((tx) => {
    const order = findOrder(tx, context, written);
    if (version !== null && version !== order.version) {
      return { reply: staleNote(order.number, order.state), changes: [], posts: [] };
    }
    const done = work(tx, order);
    if (!done.changed) {
      return { reply: done.reply, changes: [], posts: [] };
    }
    const after = orderById(tx, order.id) ?? done.order;
    const isExpected = order.expectedAt !== after.expectedAt;
    return {
      reply: done.reply,
      changes: [
        {
          action,
          subject: `order:${order.id}`,
          before: { state: order.state, held: order.heldReason, ...(isExpected ? { expectedAt: order.expectedAt } : {}) },
          after: { state: after.state, held: after.heldReason, ...(isExpected ? { expectedAt: after.expectedAt } : {}), ...done.detail },
          player: order.playerId,
        },
      ],
      posts: orderPosts(tx, after, context.now),
    };
  });
}
