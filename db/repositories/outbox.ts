import { and, asc, eq, max, min, sql } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { outbox } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";

export type OutboxRow = typeof outbox.$inferSelect;

/** What marks a post: `nonce` for the platform (random, at most 25 characters), `ref` for a reader of the channel. */
export interface PostMark {
  readonly nonce: string;
  readonly ref: string;
}

interface NewPost extends PostMark {
  readonly channel: string;
  /** The same key twice is the same post. */
  readonly dedupeKey: string;
  readonly card: unknown;
  /** The moment of the transaction: posts of a channel leave in the order they were planned. */
  readonly at: Instant;
}

/**
 * Plans a post that leaves exactly once.
 *
 * @param tx - the transaction that causes the post
 * @param post - channel, dedupe key, marks, card as JSON and the moment
 * @returns the post's row, and whether it is new: the same dedupe key gives the row planned before
 */
export function enqueuePost(tx: Tx, post: NewPost): { readonly id: Id<"outbox">; readonly isNew: boolean } {
  const { at, card, ...columns } = post;
  const row = { ...columns, card: JSON.stringify(card ?? null), nextAt: at };
  const made = tx.insert(outbox).values(row).onConflictDoNothing({ target: outbox.dedupeKey }).returning({ id: outbox.id }).get();
  if (made !== undefined) {
    return { id: made.id, isNew: true };
  }
  const known = tx.select({ id: outbox.id }).from(outbox).where(eq(outbox.dedupeKey, post.dedupeKey)).get();
  if (known === undefined) {
    throw new Error(`a post is neither new nor known: ${post.dedupeKey}`);
  }
  return { id: known.id, isNew: false };
}

/** @returns whether a post of this key was planned before */
export function isPlanned(reader: Reader, dedupeKey: string): boolean {
  return reader.select({ id: outbox.id }).from(outbox).where(eq(outbox.dedupeKey, dedupeKey)).get() !== undefined;
}

/**
 * Lists the channels with posts that have yet to leave.
 *
 * @param reader - database or transaction
 * @returns channels, by their oldest post
 */
export function pendingChannels(reader: Reader): readonly string[] {
  const rows = reader.select({ channel: outbox.channel }).from(outbox).where(isPending).groupBy(outbox.channel).orderBy(min(outbox.id)).all();
  return rows.map(({ channel }) => channel);
}

/**
 * Finds the next post of a channel: the lowest id, so that their order is kept.
 *
 * @param reader - database or transaction
 * @param channel - the lane
 * @returns the post, due or not, or null when the lane is empty
 */
export function nextPost(reader: Reader, channel: string): OutboxRow | null {
  return (
    reader
      .select()
      .from(outbox)
      .where(and(isPending, eq(outbox.channel, channel)))
      .orderBy(asc(outbox.id))
      .limit(1)
      .get() ?? null
  );
}

/**
 * Records that a post is about to be tried: from here on its card stays as it is.
 *
 * @param tx - a transaction of its own, on disk before the try
 * @param id - the post
 * @param now - the moment
 */
export function markTrying(tx: Tx, id: Id<"outbox">, now: Instant): void {
  tx.update(outbox)
    .set({ attempts: sql`${outbox.attempts} + 1`, firstTryAt: sql`coalesce(${outbox.firstTryAt}, ${now})` })
    .where(and(isPending, eq(outbox.id, id)))
    .run();
}

/**
 * Records that a post is in its channel.
 *
 * @param tx - a transaction
 * @param id - the post
 * @param messageId - the platform's name for it
 */
export function markSent(tx: Tx, id: Id<"outbox">, messageId: string): void {
  tx.update(outbox)
    .set({ state: "sent", messageId, lastError: null })
    .where(and(isPending, eq(outbox.id, id)))
    .run();
}

/**
 * Puts off a post.
 *
 * @param tx - a transaction
 * @param id - the post
 * @param nextAt - not tried before
 * @param lastError - why; null leaves what is there
 */
export function markLater(tx: Tx, id: Id<"outbox">, nextAt: Instant, lastError: string | null): void {
  tx.update(outbox)
    .set({ nextAt, ...(lastError === null ? {} : { lastError }) })
    .where(and(isPending, eq(outbox.id, id)))
    .run();
}

/**
 * Gives up a post that the platform will never take.
 *
 * @param tx - a transaction
 * @param id - the post
 * @param lastError - why
 */
export function markDead(tx: Tx, id: Id<"outbox">, lastError: string): void {
  tx.update(outbox)
    .set({ state: "dead", lastError })
    .where(and(isPending, eq(outbox.id, id)))
    .run();
}

/**
 * Makes every post look tried already, so that history is read before it leaves: for a database that was restored from
 * a backup, whose pending posts may have left after the backup was taken.
 *
 * @param tx - a transaction
 * @returns how many posts this concerns
 */
export function distrustPending(tx: Tx): number {
  return tx
    .update(outbox)
    .set({ firstTryAt: sql`${outbox.nextAt}` })
    .where(and(isPending, sql`${outbox.firstTryAt} IS NULL`))
    .run().changes;
}

/**
 * Finds a post.
 *
 * @param reader - database or transaction
 * @param id - the post
 * @returns its row, or null
 */
export function findPost(reader: Reader, id: Id<"outbox">): OutboxRow | null {
  return reader.select().from(outbox).where(eq(outbox.id, id)).get() ?? null;
}

/**
 * Finds the highest id planned so far: where one pass over the outbox ends, whatever is planned meanwhile.
 *
 * @param reader - database or transaction
 * @returns the id, or 0 when nothing was ever planned
 */
export function newestPost(reader: Reader): number {
  return (
    reader
      .select({ id: max(outbox.id) })
      .from(outbox)
      .get()?.id ?? 0
  );
}

const isPending = eq(outbox.state, sql`'pending'`);

/**
 * Finds a post by the short marker people see in it.
 *
 * @param reader - database or transaction
 * @param ref - the marker
 * @returns the newest post of that marker, or null
 */
export function findPostByRef(reader: Reader, ref: string): OutboxRow | null {
  return reader.select().from(outbox).where(eq(outbox.ref, ref)).orderBy(sql`${outbox.id} DESC`).limit(1).get() ?? null;
}
