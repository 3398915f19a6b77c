import type { Instant } from "../../core/kinds.ts";
import { findReply } from "../../db/repositories/inbound.ts";
import { benchVersion } from "../../db/repositories/orders.ts";
import type { ChannelRow } from "../../db/repositories/people.ts";
import { type Tx, write } from "../../db/write.ts";
import type { Committed, Context } from "../chat/context.ts";
import type { Actor, Incoming, Json, Reply } from "../chat/types.ts";
import { estimateBench } from "../flows/estimateBench.ts";
import { commitAll } from "./commitAll.ts";
import type { DeskParts } from "./deskParts.ts";

/** What a command is handed of one arrival: who asks, where and when, reading, estimating, and its one commit. */
export function contextOf(
  parts: DeskParts,
  incoming: Incoming,
  channel: ChannelRow,
  known: Actor | null,
  now: Instant,
): Context & { readonly committed: () => boolean } {
  const actor = known ?? {
    person: null,
    name: incoming.sender.platformId,
    roles: [],
    truck: null,
    zone: "UTC",
    ownZone: "UTC",
    lengthUnit: "in" as const,
  };
  let isCommitted = false;
  const commit = (work: (tx: Tx) => Committed): Reply | null => {
    if (isCommitted) {
      throw new Error("a command commits once");
    }
    parts.crash?.("before-commit");
    const reply = write(parts.db, (tx) => {
      const known = findReply(tx, incoming.key);
      return known === null ? (commitAll(parts, tx, { incoming, channel, actor, now }, work(tx)) as Json) : (known.reply as Json);
    }) as Reply | null;
    isCommitted = true;
    parts.crash?.("after-commit");
    return reply;
  };
  return {
    actor,
    now,
    key: incoming.key,
    channel,
    committed: () => isCommitted,
    read: (query) => query(parts.db),
    estimate: (truck, extra) => estimateBench(parts.db, parts.seed, { truck, now: parts.now(), extra }),
    commit,
    commitAt: (truck, version, work) => (benchVersion(parts.db, truck) === version ? commit(work) : "moved"),
  };
}
