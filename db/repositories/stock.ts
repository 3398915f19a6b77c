import type { Id, Instant } from "../../core/kinds.ts";
import { stockEntry } from "../schema/stock.ts";
import type { Reader, Tx } from "../write.ts";
import { partsLying } from "./stockCount.ts";

/** Writes one line of the stock ledger. */
export function addStockEntry(tx: Tx, row: typeof stockEntry.$inferInsert): void {
  tx.insert(stockEntry).values(row).run();
}

const goodsIn = (reader: Reader, truckId: Id<"truck">) =>
  partsLying(reader)
    .map((row) => ({ ...row, free: row.lying - row.held }))
    .filter(({ model, place, free }) => model.kind === "goods" && place.truckId === truckId && free > 0);

/** Lists the float of balls, hats and gloves in a truck, by name. */
export function floatOf(reader: Reader, truckId: Id<"truck">): readonly { readonly name: string; readonly free: number }[] {
  return goodsIn(reader, truckId).map(({ model, free }) => ({ name: model.name, free }));
}

/**
 * Takes goods out of a truck's float, as far as there are any.
 *
 * @param tx - the transaction that says where they went
 * @param taken - which goods, how many, for what, by whom and when
 * @returns how many were there to take
 */
export function takeGoods(
  tx: Tx,
  taken: {
    readonly truckId: Id<"truck">;
    readonly name: string;
    readonly quantity: number;
    readonly reason: string;
    readonly personId: Id<"person">;
    readonly at: Instant;
  },
): number {
  let left = taken.quantity;
  for (const row of goodsIn(tx, taken.truckId).filter(({ model }) => model.name === taken.name)) {
    const quantity = Math.min(left, row.free);
    if (quantity > 0) {
      addStockEntry(tx, {
        partModelId: row.model.id,
        placeId: row.place.id,
        quantityChange: -quantity,
        reason: taken.reason,
        personId: taken.personId,
        at: taken.at,
      });
      left -= quantity;
    }
  }
  return taken.quantity - left;
}
