import { and, asc, eq } from "drizzle-orm";
import type { Id } from "../../core/kinds.ts";
import { place } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";

export type PlaceRow = typeof place.$inferSelect;

/** @returns the place, or null when there is none of that id */
export function placeById(reader: Reader, id: Id<"place">): PlaceRow | null {
  return reader.select().from(place).where(eq(place.id, id)).get() ?? null;
}

/** @returns the player's own bin in a truck, or null */
export function binOf(reader: Reader, truckId: Id<"truck">, playerId: Id<"player">): PlaceRow | null {
  return (
    reader
      .select()
      .from(place)
      .where(and(eq(place.truckId, truckId), eq(place.playerId, playerId), eq(place.kind, "playerBin")))
      .get() ?? null
  );
}

/** Lists the places of a truck, oldest first. */
export function placesIn(reader: Reader, truckId: Id<"truck">): readonly PlaceRow[] {
  return reader.select().from(place).where(eq(place.truckId, truckId)).orderBy(asc(place.id)).all();
}

/** Adds a place where parts lie. */
export function addPlace(tx: Tx, row: typeof place.$inferInsert): Id<"place"> {
  return tx.insert(place).values(row).returning({ id: place.id }).get().id;
}
