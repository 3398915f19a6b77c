import type { Id, Instant } from "../../core/kinds.ts";
import { orderById } from "../../db/repositories/orders.ts";
import { owedToBins, oweToBin, refill } from "../../db/repositories/replenishment.ts";
import { addStockEntry } from "../../db/repositories/stock.ts";
import { type PartLying, partsLying } from "../../db/repositories/stockCount.ts";
import type { Reader, Tx } from "../../db/write.ts";

type Owed = ReturnType<typeof owedToBins>[number];
export interface DoneBy {
  readonly personId: Id<"person">;
  readonly now: Instant;
}

/** One kind of part owed to a bin, summed over the orders that took it. */
export interface OwedPart {
  readonly partModelId: Id<"partModel">;
  readonly name: string;
  readonly quantity: number;
  readonly orderNumbers: readonly number[];
}

/** What is owed to one bin. `lastId` is the newest row of the list: what is owed later is not on it. */
export interface OwedBin {
  readonly placeId: Id<"place">;
  readonly place: string;
  readonly lastId: number;
  readonly parts: readonly OwedPart[];
}

/** What a bin was refilled with, and what the rack did not have: `atHomeBase` of it lie there. */
export interface Refilled {
  readonly place: string;
  readonly moved: readonly { readonly name: string; readonly quantity: number }[];
  readonly short: readonly { readonly name: string; readonly quantity: number; readonly atHomeBase: number }[];
}

const placeShown = ({ place, playerCode }: Owed): string => (playerCode === null ? place : `bin ${playerCode}`);
const nameShown = ({ part, partCode }: Owed): string => partCode ?? part;
const sum = (rows: readonly { readonly quantity: number }[]): number => rows.reduce((total, { quantity }) => total + quantity, 0);

/** The rows of each kind of part, in the order it was first owed. */
function byPart(rows: readonly Owed[]): readonly (readonly [Owed, readonly Owed[]])[] {
  const first = rows.filter((row, at) => rows.findIndex(({ partModelId }) => partModelId === row.partModelId) === at);
  return first.map((row) => [row, rows.filter(({ partModelId }) => partModelId === row.partModelId)]);
}

/** Lists what a truck's bins are owed, a bin a row. */
export function owedBins(reader: Reader, truckId: Id<"truck">): readonly OwedBin[] {
  const rows = owedToBins(reader, truckId);
  const bins = rows.filter((row, at) => rows.findIndex(({ placeId }) => placeId === row.placeId) === at);
  return bins.map((bin) => {
    const own = rows.filter(({ placeId }) => placeId === bin.placeId);
    return {
      placeId: bin.placeId,
      place: placeShown(bin),
      lastId: Math.max(...own.map(({ id }) => id)),
      parts: byPart(own).map(([row, alike]) => ({
        partModelId: row.partModelId,
        name: nameShown(row),
        quantity: sum(alike),
        orderNumbers: [...new Set(alike.flatMap(({ orderId }) => (orderId === null ? [] : (orderById(reader, orderId)?.number ?? []))))],
      })),
    };
  });
}

/**
 * Marks what is owed as refilled, the oldest first, as far as so many go; what a row still lacks stays owed.
 *
 * @returns how many were owed of what was put in
 */
export function markRefilled(tx: Tx, rows: readonly Owed[], quantity: number, { personId, now }: DoneBy): number {
  let left = quantity;
  for (const row of rows) {
    const taken = Math.min(left, row.quantity);
    if (taken > 0) {
      refill(tx, [row.id], personId, now);
      if (taken < row.quantity) {
        oweToBin(tx, { placeId: row.placeId, partModelId: row.partModelId, quantity: row.quantity - taken, orderId: row.orderId, at: row.at });
      }
      left -= taken;
    }
  }
  return quantity - left;
}

/** The free parts of a model that lie where a condition holds. */
function freeWhere(
  lying: readonly PartLying[],
  modelId: Id<"partModel">,
  holds: (row: PartLying) => boolean,
): readonly (PartLying & { free: number })[] {
  return lying.filter((row) => row.model.id === modelId && holds(row)).map((row) => ({ ...row, free: Math.max(0, row.lying - row.held) }));
}

/**
 * Refills a bin from the main rack with what it was owed when the list was shown, as far as the rack has it.
 *
 * @param bin - which, and the newest row of the list that was shown
 * @returns null when nothing of that list is owed any more
 */
export function refillBin(
  tx: Tx,
  truckId: Id<"truck">,
  bin: { readonly placeId: Id<"place">; readonly lastId: number },
  by: DoneBy,
): Refilled | null {
  const rows = owedToBins(tx, truckId).filter(({ id, placeId }) => placeId === bin.placeId && id <= bin.lastId);
  const [first] = rows;
  if (first === undefined) {
    return null;
  }
  const lying = partsLying(tx);
  const parts = byPart(rows).map(([row, alike]) => {
    const owed = sum(alike);
    const [rack] = freeWhere(lying, row.partModelId, ({ place }) => place.truckId === truckId && place.kind === "mainRack");
    const moved = Math.min(owed, rack?.free ?? 0);
    if (rack !== undefined && moved > 0) {
      const entry = { partModelId: row.partModelId, personId: by.personId, at: by.now };
      addStockEntry(tx, { ...entry, placeId: rack.place.id, quantityChange: -moved, reason: `to ${row.place}` });
      addStockEntry(tx, { ...entry, placeId: row.placeId, quantityChange: moved, reason: `from ${rack.place.label}` });
      markRefilled(tx, alike, moved, by);
    }
    const homeBase = freeWhere(lying, row.partModelId, ({ place }) => place.kind === "homeBase");
    return { name: nameShown(row), moved, short: owed - moved, atHomeBase: homeBase.reduce((total, { free }) => total + free, 0) };
  });
  return {
    place: placeShown(first),
    moved: parts.filter(({ moved }) => moved > 0).map(({ name, moved }) => ({ name, quantity: moved })),
    short: parts.filter(({ short }) => short > 0).map(({ name, short, atHomeBase }) => ({ name, quantity: short, atHomeBase })),
  };
}
