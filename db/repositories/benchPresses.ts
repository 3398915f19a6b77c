import { and, asc, eq, gte, inArray, max } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { benchPress, buildOrder, type pressKinds } from "../schema/orders.ts";
import type { Reader, Tx } from "../write.ts";

export type PressRow = typeof benchPress.$inferSelect;
type PressKind = (typeof pressKinds)[number];

/** Keeps a press at the bench as it came. */
export function addPress(
  tx: Tx,
  row: { readonly orderId: Id<"order">; readonly press: PressKind; readonly personId: Id<"person">; readonly at: Instant },
): void {
  tx.insert(benchPress).values(row).run();
}

/** Lists the presses on an order, oldest first. */
export function pressesOf(reader: Reader, orderId: Id<"order">): readonly PressRow[] {
  return reader.select().from(benchPress).where(eq(benchPress.orderId, orderId)).orderBy(asc(benchPress.at), asc(benchPress.id)).all();
}

/** Lists the presses at a truck's bench since a moment, oldest first. */
export function truckPresses(reader: Reader, truckId: Id<"truck">, since: Instant): readonly PressRow[] {
  return reader
    .select({ press: benchPress })
    .from(benchPress)
    .innerJoin(buildOrder, eq(buildOrder.id, benchPress.orderId))
    .where(and(eq(buildOrder.truckId, truckId), gte(benchPress.at, since)))
    .orderBy(asc(benchPress.at), asc(benchPress.id))
    .all()
    .map(({ press }) => press);
}

/** Lists every press there is, oldest first: what is learned of durations rests on them. */
export function allPresses(reader: Reader): readonly PressRow[] {
  return reader.select().from(benchPress).orderBy(asc(benchPress.at), asc(benchPress.id)).all();
}

/** @returns the id of the newest press, 0 before the first: what was learned is new as long as it stays */
export function lastPressId(reader: Reader): number {
  return (
    reader
      .select({ id: max(benchPress.id) })
      .from(benchPress)
      .get()?.id ?? 0
  );
}

/** Lists the orders that presses name. */
export function pressedOrders(reader: Reader, ids: readonly Id<"order">[]) {
  return reader
    .select()
    .from(buildOrder)
    .where(inArray(buildOrder.id, [...ids]))
    .orderBy(asc(buildOrder.id))
    .all();
}
