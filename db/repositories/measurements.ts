import { and, asc, eq } from "drizzle-orm";
import type { Id } from "../../core/kinds.ts";
import { measurement } from "../schema/orders.ts";
import type { Reader, Tx } from "../write.ts";

/** Keeps what the gauge said. */
export function addMeasurement(tx: Tx, row: typeof measurement.$inferInsert): void {
  tx.insert(measurement).values(row).run();
}

/** Reads the newest measurement of each quantity of a sheet's club, as left unless as found is asked for. */
export function measuredOf(reader: Reader, sheetId: Id<"sheet">, stage: "found" | "left" = "left") {
  const rows = reader
    .select()
    .from(measurement)
    .where(and(eq(measurement.sheetId, sheetId), eq(measurement.stage, stage)))
    .orderBy(asc(measurement.id))
    .all();
  return [...new Map(rows.map((row) => [row.quantity, row])).values()];
}
