import { instant } from "../../core/kinds.ts";
import { markDead, markLater, markSent, markTrying, type OutboxRow } from "../../db/repositories/outbox.ts";
import { write } from "../../db/write.ts";
import type { Card, Sent } from "../chat/types.ts";
import { backOff } from "./backOff.ts";
import { type OutboxWork, type Outcome, outcome } from "./outboxDeps.ts";

/** How far before the first try history is read: the platform's clock and ours need not agree. */
const CLOCK_DOUBT_MS = 60 * 60_000;

/** What the lane does next: go on with the next post, wait, or stop altogether. */
export type Step = { readonly kind: "sent" | "dead" | "waits" } | { readonly kind: "stop"; readonly reason: string };

/**
 * Tries one post. The try is on disk before it is made; one that may have left before is looked for in the channel first.
 */
export async function sendPost(deps: OutboxWork, post: OutboxRow): Promise<Step> {
  write(deps.db, (tx) => markTrying(tx, post.id, deps.now()));
  const { sent, error } = await findOrSend(deps, post);
  const at = deps.now();
  deps.crash?.("before-mark");
  switch (sent.kind) {
    case "sent":
      write(deps.db, (tx) => markSent(tx, post.id, sent.message));
      return { kind: "sent" };
    case "later":
      write(deps.db, (tx) => markLater(tx, post.id, backOff(at, post.attempts + 1, sent.afterMs, deps.random()), error));
      return { kind: "waits" };
    case "stop":
      write(deps.db, (tx) => markLater(tx, post.id, at, sent.reason));
      return { kind: "stop", reason: sent.reason };
    default:
      write(deps.db, (tx) => {
        markDead(tx, post.id, sent.reason);
        deps.onDead(tx, { outboxId: post.id, channel: post.channel, ref: post.ref, reason: sent.reason, subject: null });
      });
      return { kind: "dead" };
  }
}

async function findOrSend(deps: OutboxWork, post: OutboxRow): Promise<Outcome<Sent>> {
  const earlier = await outcome(() => findEarlier(deps, post));
  if (earlier.sent !== null) {
    return { sent: earlier.sent, error: earlier.error };
  }
  deps.crash?.("before-send");
  const made = await outcome(() => deps.sender.send(post.channel, JSON.parse(post.card) as Card, { nonce: post.nonce, ref: post.ref }));
  deps.crash?.("after-send");
  return made;
}

/** The message of an earlier try, or null when there was none or it never arrived. */
async function findEarlier(deps: OutboxWork, post: OutboxRow): Promise<Sent | null> {
  if (post.firstTryAt === null) {
    return null;
  }
  const since = instant(Math.min(post.firstTryAt, deps.now()) - CLOCK_DOUBT_MS);
  const message = await deps.sender.find(post.channel, post.ref, since);
  return message === null ? null : { kind: "sent", message };
}
