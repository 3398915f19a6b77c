import { and, asc, eq, inArray, isNull } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { player } from "../schema/people.ts";
import { partModel, place, replenishment } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";

/** Notes what was taken from a player's bin: it is owed back to it. */
export function oweToBin(tx: Tx, row: Omit<typeof replenishment.$inferInsert, "id" | "refilledAt" | "refilledById">): Id<"replenishment"> {
  return tx.insert(replenishment).values(row).returning({ id: replenishment.id }).get().id;
}

/** Lists what is owed to the bins of a truck, by bin and part; an erased player has no name. */
export function owedToBins(reader: Reader, truckId: Id<"truck">) {
  return reader
    .select({
      id: replenishment.id,
      playerId: place.playerId,
      playerName: player.name,
      playerCode: player.restrictedCode,
      placeId: replenishment.placeId,
      place: place.label,
      partModelId: replenishment.partModelId,
      kind: partModel.kind,
      part: partModel.name,
      partCode: partModel.restrictedCode,
      quantity: replenishment.quantity,
      orderId: replenishment.orderId,
      at: replenishment.at,
    })
    .from(replenishment)
    .innerJoin(place, eq(place.id, replenishment.placeId))
    .innerJoin(partModel, eq(partModel.id, replenishment.partModelId))
    .leftJoin(player, eq(player.id, place.playerId))
    .where(and(eq(place.truckId, truckId), isNull(replenishment.refilledAt)))
    .orderBy(asc(place.label), asc(partModel.name), asc(replenishment.id))
    .all();
}

/**
 * Marks what is owed as put back, each once.
 *
 * @returns the rows that were still owed: what goes into which bin
 */
export function refill(tx: Tx, ids: readonly Id<"replenishment">[], personId: Id<"person">, at: Instant) {
  return tx
    .update(replenishment)
    .set({ refilledAt: at, refilledById: personId })
    .where(and(inArray(replenishment.id, [...ids]), isNull(replenishment.refilledAt)))
    .returning()
    .all();
}
