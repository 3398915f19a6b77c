import type { Instant } from "../../core/kinds.ts";
import { findLivePost } from "../../db/repositories/livePosts.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { truckChannel } from "../../db/repositories/people.ts";
import type { Tx } from "../../db/write.ts";
import type { Post } from "../chat/context.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { orderCard } from "../replies/orderCard.ts";
import { sheetCard } from "../replies/sheetCard.ts";
import { benchPosts } from "./benchPosts.ts";

/** The order's own post. */
export function orderPost(tx: Tx, order: OrderRow, now: Instant): Post {
  return { channel: order.channel, key: `order:${order.id}`, live: `order:${order.id}`, card: orderCard(orderFacts(tx, order, now), now) };
}

/** The posts that show an order: its own, the technician's sheet once confirmed, and the truck's board. */
export function orderPosts(tx: Tx, order: OrderRow, now: Instant): readonly Post[] {
  const facts = orderFacts(tx, order, now);
  const own: Post = { channel: order.channel, key: `order:${order.id}`, live: `order:${order.id}`, card: orderCard(facts, now) };
  const bench = truckChannel(tx, order.truckId, "bench");
  const offBench = order.state === "draft" || order.state === "withdrawn";
  if (bench === null || (offBench && findLivePost(tx, { subject: `sheet:${order.id}`, channel: bench }) === null)) {
    return [own];
  }
  const sheet: Post = { channel: bench, key: `sheet:${order.id}`, live: `sheet:${order.id}`, card: sheetCard(facts, now) };
  return [own, sheet, ...benchPosts(tx, order.truckId, now)];
}
