import { eq } from "drizzle-orm";
import { meta } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";

/**
 * Reads one of the database's own facts.
 *
 * @param reader - database or transaction
 * @param key - its name
 * @returns the text kept under that name, or null
 */
export function metaValue(reader: Reader, key: string): string | null {
  return reader.select().from(meta).where(eq(meta.key, key)).get()?.value ?? null;
}

/**
 * Keeps one of the database's own facts, in place of what was kept under that name.
 *
 * @param tx - a transaction
 * @param key - its name
 * @param value - any text
 */
export function setMeta(tx: Tx, key: string, value: string): void {
  tx.insert(meta).values({ key, value }).onConflictDoUpdate({ target: meta.key, set: { value } }).run();
}
