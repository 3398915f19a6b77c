import { eq, sql } from "drizzle-orm";
import type { Id } from "../../core/kinds.ts";
import { keptPost } from "../schema/orders.ts";
import type { Reader, Tx } from "../write.ts";

/** Keeps a post with faults whole, so that a press can mend a word of it. */
export function keepPost(tx: Tx, row: Omit<typeof keptPost.$inferInsert, "id" | "version">): Id<"keptPost"> {
  return tx
    .insert(keptPost)
    .values({ ...row, version: 1 })
    .onConflictDoUpdate({ target: keptPost.sourceKey, set: { text: row.text, version: sql`${keptPost.version} + 1` } })
    .returning({ id: keptPost.id })
    .get().id;
}

/** @returns the kept post, or null */
export function keptPostById(reader: Reader, id: Id<"keptPost">) {
  return reader.select().from(keptPost).where(eq(keptPost.id, id)).get() ?? null;
}
