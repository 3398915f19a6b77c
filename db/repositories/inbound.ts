import { eq } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { inbound } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";

/**
 * Finds the reply to something that was received before.
 *
 * @param reader - database or transaction
 * @param key - names what was received, `press:<id>` for instance
 * @returns the stored reply, or null when it is new
 */
export function findReply(reader: Reader, key: string): { readonly reply: unknown } | null {
  const row = reader.select({ reply: inbound.reply }).from(inbound).where(eq(inbound.key, key)).get();
  return row === undefined ? null : { reply: JSON.parse(row.reply) };
}

/** Something received: its key, moment, sender (null for a stranger) and the reply as JSON. */
interface Received {
  readonly key: string;
  readonly at: Instant;
  readonly personId: Id<"person"> | null;
  readonly reply: unknown;
}

/**
 * Keeps the reply to something received, once.
 *
 * @param tx - the transaction that makes the change
 * @returns false when the key was there already: nothing is changed, and the change must not be made again
 */
export function insertInbound(tx: Tx, received: Received): boolean {
  const row = { ...received, reply: JSON.stringify(received.reply ?? null) };
  return tx.insert(inbound).values(row).onConflictDoNothing().run().changes === 1;
}
