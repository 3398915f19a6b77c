import type { Id } from "../../core/kinds.ts";
import { putHead, takeHead } from "../../db/repositories/heads.ts";
import { type OrderRow, orderById } from "../../db/repositories/orders.ts";
import { addStockEntry } from "../../db/repositories/stock.ts";
import { type HeadOnRecord, headsOnRecord, holdsOfPart, partsLying } from "../../db/repositories/stockCount.ts";
import type { Tx } from "../../db/write.ts";
import type { Count, CountedDrawer } from "../boundary/stock/readCount.ts";
import { type PartQuantity, shownName } from "../boundary/stock/stockKnown.ts";
import type { DoneBy } from "./refillBin.ts";
import { replanOrder } from "./replanOrder.ts";

export interface PartCounted {
  readonly modelId: Id<"partModel">;
  readonly placeId: Id<"place">;
  readonly name: string;
  readonly place: string;
  readonly onRecordCount: number;
  readonly countedCount: number;
}

/** A head that is not where the record had it; null: in no place. */
export interface HeadCounted {
  readonly headId: Id<"head">;
  readonly serial: string;
  readonly model: string;
  readonly from: string | null;
  readonly to: string | null;
}

export interface Counted {
  readonly parts: readonly PartCounted[];
  readonly drawers: readonly { readonly place: string; readonly onRecordCount: number; readonly countedCount: number }[];
  readonly heads: readonly HeadCounted[];
  /** Orders that held what is gone, planned anew. */
  readonly replanned: readonly { readonly order: OrderRow; readonly canBeBuilt: boolean; readonly gone: readonly string[] }[];
}

/**
 * Sets the record right by a count. An order that held what is gone is planned anew; of several that held a part, the
 * newest gives way first.
 */
export function countStock(tx: Tx, count: Count, truckId: Id<"truck">, by: DoneBy): Counted {
  const gone = new Map<Id<"order">, string[]>();
  const lose = (orderId: Id<"order">, name: string): void => void gone.set(orderId, [...(gone.get(orderId) ?? []), name]);
  const lying = partsLying(tx);
  const parts = count.parts.map((row) => {
    const onRecordCount = lying.find(({ model, place }) => model.id === row.part.id && place.id === row.place.id)?.lying ?? 0;
    return setRight(tx, row, onRecordCount, lose, by);
  });
  const record = headsOnRecord(tx);
  const heads = moveHeads(tx, count.drawers, record, { truckId, lose });
  const replanned = [...gone].flatMap(([orderId, names]) => {
    const order = orderById(tx, orderId);
    return order?.state === "confirmed" ? [{ ...replanOrder(tx, order, by), gone: [...new Set(names)] }] : [];
  });
  const drawers = count.drawers.map(({ place, serials }) => ({
    place: place.shown,
    onRecordCount: record.filter((row) => row.place?.id === place.id && row.head.retiredAt === null).length,
    countedCount: serials.length,
  }));
  return { parts, drawers, heads, replanned };
}

type Lose = (orderId: Id<"order">, name: string) => void;

function setRight(tx: Tx, { part, place, quantity }: PartQuantity, onRecordCount: number, lose: Lose, { personId, now }: DoneBy): PartCounted {
  if (quantity !== onRecordCount) {
    const quantityChange = quantity - onRecordCount;
    addStockEntry(tx, { partModelId: part.id, placeId: place.id, quantityChange, reason: "counted", personId, at: now });
  }
  const holds = holdsOfPart(tx, part.id, place.id);
  let held = holds.reduce((total, hold) => total + hold.quantity, 0);
  for (const hold of holds) {
    if (held > quantity) {
      lose(hold.orderId, shownName(part));
      held -= hold.quantity;
    }
  }
  return { modelId: part.id, placeId: place.id, name: shownName(part), place: place.shown, onRecordCount, countedCount: quantity };
}

/** Puts every head found into its drawer, and takes those not found out of theirs. */
function moveHeads(
  tx: Tx,
  drawers: readonly CountedDrawer[],
  record: readonly HeadOnRecord[],
  { truckId, lose }: { readonly truckId: Id<"truck">; readonly lose: Lose },
): readonly HeadCounted[] {
  const foundIn = new Map(drawers.flatMap(({ place, serials }) => serials.map((serial) => [serial, place] as const)));
  const counted = new Set(drawers.map(({ place }) => place.id));
  return record.flatMap((row): readonly HeadCounted[] => {
    const { head, model, place, heldBy } = row;
    const found = foundIn.get(head.serial);
    const shown = { headId: head.id, serial: head.serial, model: model.restrictedCode ?? model.name, from: placeName(row, truckId) };
    if (found !== undefined && found.id !== place?.id) {
      putHead(tx, head.id, found.id);
      if (heldBy !== null && heldBy.truckId !== truckId) lose(heldBy.orderId, `head ${head.serial}`);
      return [{ ...shown, to: found.shown }];
    }
    if (found === undefined && place !== null && counted.has(place.id) && head.retiredAt === null) {
      takeHead(tx, head.id);
      if (heldBy !== null) lose(heldBy.orderId, `head ${head.serial}`);
      return [{ ...shown, to: null }];
    }
    return [];
  });
}

/** Of another truck it is said. */
const placeName = ({ place, truckName }: HeadOnRecord, truckId: Id<"truck">): string | null =>
  place === null ? null : place.truckId === null || place.truckId === truckId ? place.label : `${place.label}, truck ${truckName}`;
