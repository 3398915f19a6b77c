import type { Instant } from "../../core/kinds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import type { Committed, Post } from "../chat/context.ts";
import { movedHeadCard } from "../replies/movedHeadCard.ts";
import { orderPosts } from "./orderPosts.ts";

/** The record of confirmed orders that took another head for one that was confirmed after them. */
export const movedChanges = (moved: readonly OrderRow[], forOrder: OrderRow): Committed["changes"] =>
  moved.map((order) => ({
    action: "order.headMoved",
    subject: `order:${order.id}`,
    before: null,
    after: { forOrder: forOrder.number },
    player: order.playerId,
  }));

/** Their cards as they stand now, and a word to their channel: nothing is swapped in silence. */
export const movedPosts = (tx: Tx, moved: readonly OrderRow[], forOrder: OrderRow, now: Instant): readonly Post[] =>
  moved.flatMap((order) => {
    const serials = sheetsOf(tx, order).flatMap(({ sheetPlan }) => sheetPlan.plan?.choice.head.serial ?? []);
    const told: Post = {
      channel: order.channel,
      key: `moved:${order.id}:${order.version}`,
      card: movedHeadCard({ number: order.number, serials, forNumber: forOrder.number }),
    };
    return [...orderPosts(tx, order, now), told];
  });
