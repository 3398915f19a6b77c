import { type Id, type Instant, id } from "../../core/kinds.ts";
import { livePostsSent, renewLivePost } from "../../db/repositories/livePosts.ts";
import { openStates, orderById } from "../../db/repositories/orders.ts";
import type { PostMark } from "../../db/repositories/outbox.ts";
import type { Tx } from "../../db/write.ts";

/** Plans the live posts of all that is open once more, for a chat that has never seen them: closed orders stay in the record. */
export function postOpenAnew(tx: Tx, at: Instant, newMark: () => PostMark): void {
  for (const live of livePostsSent(tx)) {
    const order = orderOf(live.subject);
    if (order === null || openStates.includes(orderById(tx, order)?.state ?? "closed")) {
      renewLivePost(tx, { ...live, at, ...newMark() });
    }
  }
}

/** The order that a post or a sheet is of; null for a board. */
function orderOf(subject: string): Id<"order"> | null {
  const [kind, number] = subject.split(":");
  return kind === "order" || kind === "sheet" ? id<"order">(Number(number)) : null;
}
