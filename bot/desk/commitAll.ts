import type { Instant } from "../../core/kinds.ts";
import { appendAudit } from "../../db/repositories/audit.ts";
import { insertInbound } from "../../db/repositories/inbound.ts";
import { enqueuePost } from "../../db/repositories/outbox.ts";
import type { ChannelRow } from "../../db/repositories/people.ts";
import type { Tx } from "../../db/write.ts";
import type { Committed } from "../chat/context.ts";
import type { Actor, Incoming, Reply } from "../chat/types.ts";
import { codeWords } from "../operations/codeWords.ts";
import { keepPosts } from "../outbox/keepPosts.ts";
import { withCodeWords } from "../replies/withCodeWords.ts";
import type { DeskParts } from "./deskParts.ts";

/** Inbound key with the reply, audit and outbox, beside the rows the work has changed. */
export function commitAll(
  parts: Pick<DeskParts, "newMark">,
  tx: Tx,
  at: { readonly incoming: Incoming; readonly channel: ChannelRow; readonly actor: Actor; readonly now: Instant },
  done: Committed,
): Reply | null {
  const { incoming, channel, actor, now } = at;
  const words = codeWords(tx);
  const answer = done.reply?.kind === "card" ? done.reply : null;
  const leavesByOutbox = incoming.kind === "message" && answer !== null;
  const isForTheLeadAlone = actor.roles.includes("lead") && !leavesByOutbox && answer?.audience === "asker";
  const shown = answer === null || isForTheLeadAlone ? done.reply : { ...answer, card: withCodeWords(answer.card, words) };
  const reply = leavesByOutbox ? null : shown;
  insertInbound(tx, { key: incoming.key, at: now, personId: actor.person, reply });
  for (const { action, subject, before, after, player } of done.changes) {
    appendAudit(tx, { at: now, personId: actor.person, action, subject, body: { before, after }, playerId: player ?? null });
  }
  if (leavesByOutbox && shown?.kind === "card") {
    enqueuePost(tx, { channel: channel.name, dedupeKey: `answer:${incoming.key}`, card: shown.card, at: now, ...parts.newMark() });
  }
  keepPosts(tx, done.posts, now, parts.newMark);
  return reply;
}
