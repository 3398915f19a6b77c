import type { Instant } from "../../core/kinds.ts";
import type { Tx } from "../../db/write.ts";
import type { Post } from "../chat/context.ts";
import type { Slip } from "../operations/applyEstimate.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { lateCard } from "../replies/lateCard.ts";

/** The calls that slips cause: one a channel, however many orders slip at once. */
export function slipPosts(tx: Tx, slips: readonly Slip[], now: Instant): readonly Post[] {
  return [...new Set(slips.map(({ order }) => order.channel))].map((channel) => {
    const own = slips.filter(({ order }) => order.channel === channel);
    const key = `late:${own.map(({ order, promiseAt }) => `${order.id}.${promiseAt ?? "never"}`).join(":")}:${now}`;
    return {
      channel,
      key,
      card: lateCard(
        own.map((slip) => ({ ...slip, facts: orderFacts(tx, slip.order, now) })),
        now,
      ),
    };
  });
}
