import { and, eq } from "drizzle-orm";
import type { Id } from "../../core/kinds.ts";
import { due } from "../schema/plumbing.ts";
import type { Reader, Tx } from "../write.ts";

type DueRow = typeof due.$inferSelect;

/**
 * Claims a reminder for one local day.
 *
 * @param tx - the transaction that plans the post
 * @param reminder - which reminder
 * @param localDate - the day there, `2027-05-03`
 * @param state - `skipped` when it is too old to be posted
 * @returns false when it was claimed before: nothing is to be posted
 */
export function claimDue(tx: Tx, reminder: string, localDate: string, state: "posted" | "skipped" = "posted"): boolean {
  return (
    tx
      .insert(due)
      .values({ reminder, localDate, state })
      .onConflictDoNothing({ target: [due.reminder, due.localDate] })
      .run().changes === 1
  );
}

/**
 * Names the post that a claimed reminder leaves by.
 *
 * @param tx - the same transaction as the claim
 * @param reminder - which reminder
 * @param localDate - the day there
 * @param outboxId - the post
 */
export function linkDuePost(tx: Tx, reminder: string, localDate: string, outboxId: Id<"outbox">): void {
  tx.update(due)
    .set({ outboxId })
    .where(and(eq(due.reminder, reminder), eq(due.localDate, localDate)))
    .run();
}

/**
 * Records that what a reminder asked for is done.
 *
 * @param tx - a transaction
 * @param reminder - which reminder
 * @param localDate - the day there
 * @returns false when it was never claimed, or is done already
 */
export function finishDue(tx: Tx, reminder: string, localDate: string): boolean {
  const open = and(eq(due.reminder, reminder), eq(due.localDate, localDate), eq(due.state, "posted"));
  return tx.update(due).set({ state: "done" }).where(open).run().changes === 1;
}

/**
 * Finds what became of a reminder on one local day.
 *
 * @param reader - database or transaction
 * @param reminder - which reminder
 * @param localDate - the day there
 * @returns the row, or null when it was never claimed
 */
export function findDue(reader: Reader, reminder: string, localDate: string): DueRow | null {
  return (
    reader
      .select()
      .from(due)
      .where(and(eq(due.reminder, reminder), eq(due.localDate, localDate)))
      .get() ?? null
  );
}
