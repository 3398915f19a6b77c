import type { Hand, Id } from "../../core/kinds.ts";
import { addHead } from "../../db/repositories/heads.ts";
import { owedToBins } from "../../db/repositories/replenishment.ts";
import { addStockEntry } from "../../db/repositories/stock.ts";
import type { Tx } from "../../db/write.ts";
import type { Receipt } from "../boundary/stock/readReceipt.ts";
import { shownName } from "../boundary/stock/stockKnown.ts";
import { type DoneBy, markRefilled } from "./refillBin.ts";

export interface Received {
  readonly parts: readonly {
    readonly name: string;
    readonly placeId: Id<"place">;
    readonly place: string;
    readonly quantity: number;
    /** How many of them the bin was owed. */
    readonly refilled: number;
  }[];
  readonly heads: readonly {
    readonly serial: string;
    readonly model: string;
    readonly hand: Hand;
    readonly stampedLoftDeg: number;
    readonly massG: number;
    readonly place: string;
  }[];
}

/** Takes in what was read: a ledger entry a part, a head a head; what a bin was owed is refilled by it. */
export function receiveStock(tx: Tx, { parts, heads }: Receipt, truckId: Id<"truck">, by: DoneBy): Received {
  return {
    parts: parts.map(({ part, place, quantity }) => {
      addStockEntry(tx, { partModelId: part.id, placeId: place.id, quantityChange: quantity, reason: "received", personId: by.personId, at: by.now });
      const owed = owedToBins(tx, truckId).filter((row) => row.placeId === place.id && row.partModelId === part.id);
      return { name: shownName(part), placeId: place.id, place: place.shown, quantity, refilled: markRefilled(tx, owed, quantity, by) };
    }),
    heads: heads.map(({ row, model, place, ...head }) => {
      addHead(tx, { ...head, modelId: model.id, placeId: place.id });
      const { serial, hand, stampedLoftDeg, massG } = head;
      return { serial, model: shownName(model), hand, stampedLoftDeg, massG, place: place.shown };
    }),
  };
}
