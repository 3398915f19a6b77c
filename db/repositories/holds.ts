import { and, eq, inArray, type SQL, sql } from "drizzle-orm";
import type { Id } from "../../core/kinds.ts";
import { sheet } from "../schema/orders.ts";
import { reservation } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";

/**
 * The holds that count, as a condition on `reservation`.
 *
 * @param pastOrders - orders whose own holds do not count
 */
export function counting(pastOrders: readonly Id<"order">[] = []): SQL {
  const held = eq(reservation.state, "held");
  const theirs = sql`SELECT ${sheet.id} FROM ${sheet} WHERE ${inArray(sheet.orderId, [...pastOrders])}`;
  return pastOrders.length === 0 ? held : sql`${held} AND ${reservation.sheetId} NOT IN (${theirs})`;
}

/** Holds a head, or so many of a counted part, for a sheet. A head is held once: the database refuses a second hold. */
export function reserve(tx: Tx, row: Omit<typeof reservation.$inferInsert, "state" | "id">): void {
  tx.insert(reservation)
    .values({ ...row, state: "held" })
    .run();
}

/** Ends the holds of a sheet: given back, or gone into the club. */
export function endReservations(tx: Tx, sheetId: Id<"sheet">, state: "released" | "consumed") {
  return tx
    .update(reservation)
    .set({ state })
    .where(and(eq(reservation.sheetId, sheetId), eq(reservation.state, "held")))
    .returning()
    .all();
}

/** Lists what a sheet holds. */
export function heldBy(reader: Reader, sheetId: Id<"sheet">) {
  return reader
    .select()
    .from(reservation)
    .where(and(eq(reservation.sheetId, sheetId), eq(reservation.state, "held")))
    .all();
}
