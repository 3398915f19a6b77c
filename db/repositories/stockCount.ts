import { and, asc, desc, eq, isNull, sql, sum } from "drizzle-orm";
import type { Id } from "../../core/kinds.ts";
import { buildOrder, sheet } from "../schema/orders.ts";
import { truck } from "../schema/people.ts";
import { head, partModel, place, reservation, shaftPiece, stockEntry } from "../schema/stock.ts";
import type { Reader } from "../write.ts";
import { counting } from "./holds.ts";
import type { PartModelRow } from "./partModels.ts";
import type { PlaceRow } from "./places.ts";

/** So many of a counted part in a place: all that lie there, and how many of them open sheets hold. */
export interface PartLying {
  readonly model: PartModelRow;
  readonly place: PlaceRow;
  readonly truckName: string | null;
  readonly lying: number;
  readonly held: number;
}

/**
 * Lists every counted part where it lies or is held, in any truck and at home base; what has run out is left out.
 *
 * @param pastOrders - orders whose own holds do not count
 */
export function partsLying(reader: Reader, pastOrders: readonly Id<"order">[] = []): readonly PartLying[] {
  const holds = reader
    .select({ modelId: reservation.partModelId, placeId: reservation.placeId, quantity: sum(reservation.quantity) })
    .from(reservation)
    .where(counting(pastOrders))
    .groupBy(reservation.partModelId, reservation.placeId)
    .all();
  const held = new Map(holds.map(({ modelId, placeId, quantity }) => [`${modelId} ${placeId}`, Number(quantity)]));
  return reader
    .select({ model: partModel, place, truckName: truck.name, lying: sql<number>`sum(${stockEntry.quantityChange})` })
    .from(stockEntry)
    .innerJoin(partModel, eq(partModel.id, stockEntry.partModelId))
    .innerJoin(place, eq(place.id, stockEntry.placeId))
    .leftJoin(truck, eq(truck.id, place.truckId))
    .groupBy(stockEntry.partModelId, stockEntry.placeId)
    .all()
    .map((row) => ({ ...row, held: held.get(`${row.model.id} ${row.place.id}`) ?? 0 }))
    .filter(({ lying, held: quantity }) => lying > 0 || quantity > 0);
}

/** A head of the record: where it lies, and the order that holds it. */
export interface HeadOnRecord {
  readonly head: typeof head.$inferSelect;
  readonly model: PartModelRow;
  /** Null when it is in a club, or was not found at a count. */
  readonly place: PlaceRow | null;
  readonly truckName: string | null;
  readonly heldBy: { readonly orderId: Id<"order">; readonly number: number; readonly truckId: Id<"truck"> } | null;
}

/** Lists every head, those retired too, by serial. */
export function headsOnRecord(reader: Reader): readonly HeadOnRecord[] {
  return reader
    .select({ head, model: partModel, place, truckName: truck.name, order: buildOrder })
    .from(head)
    .innerJoin(partModel, eq(partModel.id, head.modelId))
    .leftJoin(place, eq(place.id, head.placeId))
    .leftJoin(truck, eq(truck.id, place.truckId))
    .leftJoin(reservation, and(eq(reservation.headId, head.id), eq(reservation.state, "held")))
    .leftJoin(sheet, eq(sheet.id, reservation.sheetId))
    .leftJoin(buildOrder, eq(buildOrder.id, sheet.orderId))
    .orderBy(asc(head.serial))
    .all()
    .map(({ order, ...row }) => ({ ...row, heldBy: order === null ? null : { orderId: order.id, number: order.number, truckId: order.truckId } }));
}

/** Lists what orders hold of a counted part in a place, the newest order first. */
export function holdsOfPart(
  reader: Reader,
  partModelId: Id<"partModel">,
  placeId: Id<"place">,
): readonly { readonly orderId: Id<"order">; readonly quantity: number }[] {
  return reader
    .select({ orderId: sheet.orderId, quantity: reservation.quantity })
    .from(reservation)
    .innerJoin(sheet, eq(sheet.id, reservation.sheetId))
    .where(and(eq(reservation.partModelId, partModelId), eq(reservation.placeId, placeId), eq(reservation.state, "held")))
    .orderBy(desc(sheet.orderId), desc(reservation.id))
    .all();
}

/** Lists every prepared shaft that lies somewhere, with the order that holds it. */
export function piecesLying(reader: Reader) {
  return reader
    .select({ piece: shaftPiece, model: partModel, place, truckName: truck.name, orderNumber: buildOrder.number })
    .from(shaftPiece)
    .innerJoin(partModel, eq(partModel.id, shaftPiece.modelId))
    .innerJoin(place, eq(place.id, shaftPiece.placeId))
    .leftJoin(truck, eq(truck.id, place.truckId))
    .leftJoin(reservation, and(eq(reservation.pieceId, shaftPiece.id), eq(reservation.state, "held")))
    .leftJoin(sheet, eq(sheet.id, reservation.sheetId))
    .leftJoin(buildOrder, eq(buildOrder.id, sheet.orderId))
    .where(isNull(shaftPiece.retiredAt))
    .orderBy(asc(shaftPiece.id))
    .all();
}

export type PieceLying = ReturnType<typeof piecesLying>[number];
