import { asc, eq } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { givenPromise, sheet } from "../schema/orders.ts";
import { truck } from "../schema/people.ts";
import type { Reader, Tx } from "../write.ts";

export type PromiseRow = typeof givenPromise.$inferSelect;

/** How a truck's bench stands: its version, the one its times were made on, and how it is run as JSON. */
export function benchOf(reader: Reader, truckId: Id<"truck">) {
  return reader.select().from(truck).where(eq(truck.id, truckId)).get() ?? null;
}

/** Notes on what version of the bench the times on record were made, when, and how the bench is run from now on. */
export function noteEstimated(
  tx: Tx,
  truckId: Id<"truck">,
  change: { readonly estimatedVersion: number; readonly estimatedAt: Instant; readonly policy: string },
): void {
  tx.update(truck).set(change).where(eq(truck.id, truckId)).run();
}

/** Notes when one club of an order is ready. */
export function noteOnSheet(
  tx: Tx,
  id: Id<"sheet">,
  times: { readonly likelyAt: Instant | null; readonly promiseAt: Instant | null; readonly playableAt: Instant | null },
): void {
  tx.update(sheet).set(times).where(eq(sheet.id, id)).run();
}

/** Puts a promise that was given on record. */
export function addPromise(tx: Tx, row: Omit<typeof givenPromise.$inferInsert, "id">): void {
  tx.insert(givenPromise).values(row).run();
}

/** Lists the promises given for an order, oldest first. */
export function promisesOf(reader: Reader, orderId: Id<"order">): readonly PromiseRow[] {
  return reader.select().from(givenPromise).where(eq(givenPromise.orderId, orderId)).orderBy(asc(givenPromise.id)).all();
}

/** Lists every promise ever given, oldest first. */
export function allPromises(reader: Reader): readonly PromiseRow[] {
  return reader.select().from(givenPromise).orderBy(asc(givenPromise.id)).all();
}
