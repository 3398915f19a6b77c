import { and, eq, gt, isNull, ne, or } from "drizzle-orm";
import { findReply } from "../../db/repositories/inbound.ts";
import { isPlanned } from "../../db/repositories/outbox.ts";
import { livePost, outbox } from "../../db/schema/plumbing.ts";
import type { Db } from "../../db/write.ts";
import { isAnswered } from "../support/platform/interactions.ts";
import type { Platform } from "../support/platform/platform.ts";
import type { Said } from "../support/platform/store.ts";

const NEWEST = 200;

/** Names, one after the other, what was said and not read, pressed and not answered, planned and not posted, changed and not shown. */
export function* unsettled(db: Db, { interactions }: Platform, said: readonly Said[]): Generator<string> {
  for (const { id, channel, nextAt, attempts, lastError } of db.select().from(outbox).where(eq(outbox.state, "pending")).all()) {
    yield `post ${id} of ${channel} has not left: due ${nextAt}, tried ${attempts} times, ${lastError}`;
  }
  const isBehind = and(gt(livePost.wanted, livePost.shown), or(isNull(livePost.refused), ne(livePost.refused, livePost.wanted)));
  for (const { subject, wanted, shown, nextAt, attempts, lastError } of db.select().from(livePost).where(isBehind).all()) {
    yield `${subject} shows ${shown} of ${wanted}: due ${nextAt}, tried ${attempts} times, ${lastError}`;
  }
  for (const { id, content } of said.slice(-NEWEST)) {
    if (findReply(db, `message:${id}:0`) === null) {
      yield `message ${id} was not read: ${content}`;
    }
  }
  for (const one of interactions.all.slice(-NEWEST)) {
    if (!isAnswered(one) && !["press", "invoke", "submit"].some((kind) => isPlanned(db, `answer:${kind}:${one.id}`))) {
      yield `interaction ${one.id} of ${one.by} was not answered: first ${one.first}, made ${Math.round(Date.now() - one.madeAtMs)} ms ago`;
    }
  }
}
