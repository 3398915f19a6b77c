import { and, asc, eq, gt, sql } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { livePost, outbox } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";
import { enqueuePost, findPost, type PostMark } from "./outbox.ts";

type LivePostRow = typeof livePost.$inferSelect;
/** A post whose newest version is not shown yet, with the message to edit. */
export interface LivePostBehind extends LivePostRow {
  readonly messageId: string;
}

/** Where a live post is: one a subject and channel. */
interface LivePostKey {
  readonly subject: string;
  readonly channel: string;
}

/**
 * Wants a live post to show a card: posted when there is none yet, edited otherwise, always to the newest version.
 *
 * A card that waits untried in the outbox is replaced there. A post given up is posted anew. The card already wanted
 * changes nothing.
 *
 * @param tx - the transaction that causes the change
 * @param wish - subject, channel, card as JSON, the moment, and marks for a post should a new one be needed
 * @returns the version now wanted, counting from 1, and the outbox row that the post lives in
 */
export function wantLivePost(
  tx: Tx,
  wish: LivePostKey & PostMark & { readonly card: unknown; readonly at: Instant },
): { readonly version: number; readonly outboxId: Id<"outbox"> } {
  const known = findLivePost(tx, wish);
  const card = JSON.stringify(wish.card ?? null);
  if (known === null) {
    const { id } = enqueuePost(tx, { ...postOf(wish, 1), card: wish.card, at: wish.at });
    tx.insert(livePost).values({ subject: wish.subject, channel: wish.channel, outboxId: id, wanted: 1, shown: 1, card, nextAt: wish.at }).run();
    return { version: 1, outboxId: id };
  }
  const post = findPost(tx, known.outboxId);
  if (known.card === card && post?.state !== "dead") {
    return { version: known.wanted, outboxId: known.outboxId };
  }
  const version = known.wanted + 1;
  update(tx, wish, { wanted: version, card, attempts: 0, nextAt: wish.at });
  if (post?.state === "dead") {
    return { version, outboxId: repostLivePost(tx, wish) };
  }
  if (post?.state === "pending" && post.firstTryAt === null) {
    tx.update(outbox).set({ card }).where(eq(outbox.id, post.id)).run();
    update(tx, wish, { shown: version });
  }
  return { version, outboxId: known.outboxId };
}

/**
 * Posts the newest version anew and makes that the live post: its message is gone, or too old to be edited.
 *
 * @param tx - a transaction
 * @param wish - subject and channel, the moment, and marks for the new post
 * @returns the new post's row
 * @throws {Error} when there is no such live post: a mistake of the caller
 */
export function repostLivePost(tx: Tx, wish: LivePostKey & PostMark & { readonly at: Instant }): Id<"outbox"> {
  const known = findLivePost(tx, wish);
  if (known === null) {
    throw new Error(`no live post ${wish.subject} in ${wish.channel}`);
  }
  const { id } = enqueuePost(tx, { ...postOf(wish, known.wanted), card: JSON.parse(known.card), at: wish.at });
  update(tx, wish, { outboxId: id, shown: known.wanted, attempts: 0, nextAt: wish.at, lastError: null });
  return id;
}

/**
 * Posts the newest version once more, as a version of its own: the post before was never where people are now.
 *
 * @param tx - a transaction
 * @param wish - subject and channel, the moment, and marks for the new post
 * @throws {Error} when there is no such live post: a mistake of the caller
 */
export function renewLivePost(tx: Tx, wish: LivePostKey & PostMark & { readonly at: Instant }): void {
  tx.update(livePost)
    .set({ wanted: sql`${livePost.wanted} + 1` })
    .where(isAt(wish))
    .run();
  repostLivePost(tx, wish);
}

/**
 * Lists the live posts of a channel whose message shows an older version than is wanted.
 *
 * @param reader - database or transaction
 * @param channel - where; null is everywhere
 * @returns due or not, the longest waiting first; a version that the platform refused is not asked for again
 */
export function livePostsBehind(reader: Reader, channel: string | null): readonly LivePostBehind[] {
  return reader
    .select({ row: livePost, messageId: outbox.messageId })
    .from(livePost)
    .innerJoin(outbox, eq(outbox.id, livePost.outboxId))
    .where(
      and(
        gt(livePost.wanted, livePost.shown),
        gt(livePost.wanted, livePost.refused),
        eq(outbox.state, "sent"),
        channel === null ? undefined : eq(livePost.channel, channel),
      ),
    )
    .orderBy(asc(livePost.nextAt), asc(livePost.subject))
    .all()
    .flatMap(({ row, messageId }) => (messageId === null ? [] : [{ ...row, messageId }]));
}

/**
 * Lists the live posts that have left, in the order in which they did.
 *
 * @param reader - database or transaction
 */
export function livePostsSent(reader: Reader): readonly LivePostKey[] {
  return reader
    .select({ subject: livePost.subject, channel: livePost.channel })
    .from(livePost)
    .innerJoin(outbox, eq(outbox.id, livePost.outboxId))
    .where(eq(outbox.state, "sent"))
    .orderBy(asc(outbox.id))
    .all();
}

/**
 * Records that a version is in the post.
 *
 * @param tx - a transaction
 * @param key - subject and channel
 * @param version - what the edit put there; an older one than known changes nothing
 */
export function markShown(tx: Tx, key: LivePostKey, version: number): void {
  tx.update(livePost)
    .set({ shown: version, attempts: 0, lastError: null })
    .where(and(isAt(key), sql`${livePost.shown} < ${version}`))
    .run();
}

/**
 * Puts off the edit of a live post.
 *
 * @param tx - a transaction
 * @param key - subject and channel
 * @param nextAt - not tried before
 * @param lastError - why; null leaves what is there
 */
export function putOffEdit(tx: Tx, key: LivePostKey, nextAt: Instant, lastError: string | null): void {
  tx.update(livePost)
    .set({ nextAt, attempts: sql`${livePost.attempts} + 1`, ...(lastError === null ? {} : { lastError }) })
    .where(isAt(key))
    .run();
}

/**
 * Gives up one version of a live post, which the platform will never take; the next one is tried again.
 *
 * @param tx - a transaction
 * @param key - subject and channel
 * @param version - what was refused
 * @param lastError - why
 */
export function markRefused(tx: Tx, key: LivePostKey, version: number, lastError: string): void {
  update(tx, key, { refused: version, lastError });
}

/**
 * Finds a live post.
 *
 * @param reader - database or transaction
 * @param key - subject and channel
 * @returns its row, or null
 */
export function findLivePost(reader: Reader, key: LivePostKey): LivePostRow | null {
  return reader.select().from(livePost).where(isAt(key)).get() ?? null;
}

const isAt = (key: LivePostKey) => and(eq(livePost.subject, key.subject), eq(livePost.channel, key.channel));

function update(tx: Tx, key: LivePostKey, columns: Partial<LivePostRow>): void {
  tx.update(livePost).set(columns).where(isAt(key)).run();
}

function postOf(wish: LivePostKey & PostMark, version: number): PostMark & { readonly channel: string; readonly dedupeKey: string } {
  return { channel: wish.channel, nonce: wish.nonce, ref: wish.ref, dedupeKey: `live:${wish.subject}:${wish.channel}:${version}` };
}
