import type { Id, Instant } from "../../core/kinds.ts";
import { takeHead } from "../../db/repositories/heads.ts";
import { endReservations } from "../../db/repositories/holds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { placeById } from "../../db/repositories/places.ts";
import { oweToBin } from "../../db/repositories/replenishment.ts";
import { takePiece } from "../../db/repositories/shaftPieces.ts";
import type { SheetRow } from "../../db/repositories/sheets.ts";
import { addStockEntry } from "../../db/repositories/stock.ts";
import type { Tx } from "../../db/write.ts";

type By = { readonly personId: Id<"person">; readonly now: Instant };

/** What comes out of a player's bin is owed back to it. */
function oweBack(
  tx: Tx,
  order: OrderRow,
  taken: { readonly placeId: Id<"place">; readonly modelId: Id<"partModel">; readonly quantity: number },
  now: Instant,
): void {
  if (placeById(tx, taken.placeId)?.kind === "playerBin") {
    oweToBin(tx, { placeId: taken.placeId, partModelId: taken.modelId, quantity: taken.quantity, orderId: order.id, at: now });
  }
}

/** The parts of a sheet leave the stock when the first is pulled: what it held is consumed, once. */
export function pullParts(tx: Tx, order: OrderRow, sheet: SheetRow, { personId, now }: By): void {
  for (const held of endReservations(tx, sheet.id, "consumed")) {
    if (held.headId !== null) {
      takeHead(tx, held.headId);
    } else if (held.pieceId !== null) {
      const piece = takePiece(tx, held.pieceId);
      if (piece !== null) {
        oweBack(tx, order, { ...piece, quantity: 1 }, now);
      }
    } else if (held.partModelId !== null && held.placeId !== null) {
      const { partModelId, placeId, quantity } = held;
      addStockEntry(tx, { partModelId, placeId, quantityChange: -quantity, reason: `order ${order.number}`, personId, at: now });
      oweBack(tx, order, { placeId, modelId: partModelId, quantity }, now);
    }
  }
}
