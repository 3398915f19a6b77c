import { and, asc, eq, isNull, or } from "drizzle-orm";
import { alias } from "drizzle-orm/sqlite-core";
import type { ShaftModel, ShaftPiece, SleeveModel } from "../../core/buildSheet/parts.ts";
import type { Id } from "../../core/kinds.ts";
import { millimetres } from "../../core/quantity/units.ts";
import { partModel, place, reservation, shaftPiece } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";
import { counting } from "./holds.ts";
import { factsOf } from "./partModels.ts";
import type { Reach } from "./reach.ts";

/**
 * Reads the prepared shafts a truck can build with now: neither held nor retired, in this truck, and in nobody else's bin.
 *
 * @param reach - the truck that builds, whose club it is, and the orders whose own holds do not count
 */
export function piecesInReach(reader: Reader, { truckId, playerId, pastOrders }: Reach): readonly ShaftPiece[] {
  const sleeve = alias(partModel, "sleeve");
  return reader
    .select({ piece: shaftPiece, model: partModel, sleeve, place })
    .from(shaftPiece)
    .innerJoin(partModel, eq(partModel.id, shaftPiece.modelId))
    .innerJoin(place, eq(place.id, shaftPiece.placeId))
    .leftJoin(sleeve, eq(sleeve.id, shaftPiece.sleeveModelId))
    .leftJoin(reservation, and(eq(reservation.pieceId, shaftPiece.id), counting(pastOrders)))
    .where(
      and(eq(place.truckId, truckId), isNull(shaftPiece.retiredAt), or(isNull(place.playerId), eq(place.playerId, playerId)), isNull(reservation.id)),
    )
    .orderBy(asc(shaftPiece.id))
    .all()
    .map((row) => ({
      id: row.piece.id,
      model: factsOf<ShaftModel>(row.model),
      state: row.piece.state,
      tipTrimMm: millimetres(row.piece.tipTrimMm),
      sleeve: row.sleeve === null ? null : factsOf<SleeveModel>(row.sleeve),
      logo: row.piece.logo,
      cutLengthMm: row.piece.cutLengthMm === null ? null : millimetres(row.piece.cutLengthMm),
      place: row.place.label,
      placeId: row.place.id,
      inPlayersBin: row.place.kind === "playerBin",
    }));
}

/** Adds a prepared shaft. */
export function addPiece(tx: Tx, row: Omit<typeof shaftPiece.$inferInsert, "id" | "retiredAt">): Id<"shaftPiece"> {
  return tx.insert(shaftPiece).values(row).returning({ id: shaftPiece.id }).get().id;
}

/**
 * Takes a prepared shaft from its place: it is in a club now.
 *
 * @returns its model and where it lay; null when it lay nowhere
 */
export function takePiece(tx: Tx, id: Id<"shaftPiece">): { readonly modelId: Id<"partModel">; readonly placeId: Id<"place"> } | null {
  const row = tx.select({ modelId: shaftPiece.modelId, placeId: shaftPiece.placeId }).from(shaftPiece).where(eq(shaftPiece.id, id)).get();
  tx.update(shaftPiece).set({ placeId: null }).where(eq(shaftPiece.id, id)).run();
  return row === undefined || row.placeId === null ? null : { modelId: row.modelId, placeId: row.placeId };
}

/** Lays a prepared shaft back in a place: it was not used after all. */
export function putPiece(tx: Tx, id: Id<"shaftPiece">, placeId: Id<"place">): void {
  tx.update(shaftPiece).set({ placeId }).where(eq(shaftPiece.id, id)).run();
}
