import { type LivePostBehind, markRefused, markShown, putOffEdit, repostLivePost } from "../../db/repositories/livePosts.ts";
import { findPost } from "../../db/repositories/outbox.ts";
import { write } from "../../db/write.ts";
import type { Card } from "../chat/types.ts";
import { backOff } from "./backOff.ts";
import { type OutboxWork, outcome } from "./outboxDeps.ts";
import type { Step } from "./sendPost.ts";

/**
 * Edits one live post to the newest version wanted. An edit done twice is an edit done once, so none is looked for.
 */
export async function syncLivePost(deps: OutboxWork, live: LivePostBehind): Promise<Step> {
  const { sent, error } = await outcome(() => deps.sender.edit(live.channel, live.messageId, JSON.parse(live.card) as Card));
  const at = deps.now();
  deps.crash?.("before-mark");
  switch (sent.kind) {
    case "sent":
      write(deps.db, (tx) => markShown(tx, live, live.wanted));
      return { kind: "sent" };
    case "later":
      write(deps.db, (tx) => putOffEdit(tx, live, backOff(at, live.attempts + 1, sent.afterMs, deps.random()), error));
      return { kind: "waits" };
    case "gone":
      write(deps.db, (tx) => repostLivePost(tx, { ...deps.newMark(), subject: live.subject, channel: live.channel, at }));
      return { kind: "waits" };
    case "stop":
      return { kind: "stop", reason: sent.reason };
    default:
      write(deps.db, (tx) => {
        markRefused(tx, live, live.wanted, sent.reason);
        const ref = findPost(tx, live.outboxId)?.ref ?? "";
        deps.onDead(tx, { outboxId: live.outboxId, channel: live.channel, ref, reason: sent.reason, subject: live.subject });
      });
      return { kind: "dead" };
  }
}
