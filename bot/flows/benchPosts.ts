import type { Id, Instant } from "../../core/kinds.ts";
import { benchStates, ordersIn } from "../../db/repositories/orders.ts";
import { truckChannel } from "../../db/repositories/people.ts";
import type { Tx } from "../../db/write.ts";
import type { Post } from "../chat/context.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { boardCard } from "../replies/boardCard.ts";

/** The truck's pinned board as it stands; none where the truck has no bench channel. */
export function benchPosts(tx: Tx, truckId: Id<"truck">, now: Instant): readonly Post[] {
  const bench = truckChannel(tx, truckId, "bench");
  if (bench === null) {
    return [];
  }
  const rows = ordersIn(tx, truckId, [...benchStates, "ready"]).map((row) => orderFacts(tx, row, now));
  return [{ channel: bench, key: `board:${truckId}`, live: `board:${truckId}`, card: boardCard(rows, now) }];
}
