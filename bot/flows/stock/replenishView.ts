import { id } from "../../../core/kinds.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { owedBins, refillBin } from "../../operations/refillBin.ts";
import { reply } from "../../replies/card.ts";
import { refilledBeforeNote, refilledNote, replenishCard } from "../../replies/stock/replenishCard.ts";
import { noTruckNote } from "../../replies/stock/stockNotes.ts";
import { mayChangeStock, refuseChange, type StockView } from "./stockView.ts";

export const replenishView: StockView = { name: "replenish", summary: "what the players' bins are owed", takes: [], answer: replenish };

function replenish(_text: string, context: Context): Reply {
  const { truck } = context.actor;
  if (truck === null) return noTruckNote();
  const bins = context.read((reader) => owedBins(reader, truck));
  return reply(replenishCard(bins, truck, mayChangeStock(context)));
}

/** One bin of the list as it was shown is done: `bin:newest row`. */
export function refill(picked: string, context: Context): Reply | null {
  const { truck, person } = context.actor;
  const [placeId, lastId] = picked.split(":").map(Number);
  if (!mayChangeStock(context)) return refuseChange(context, "replenish");
  if (truck === null || person === null || placeId === undefined || lastId === undefined) return noTruckNote();
  return context.commit((tx) => {
    const refilled = refillBin(tx, truck, { placeId: id<"place">(placeId), lastId }, { personId: person, now: context.now });
    if (refilled === null) return { reply: refilledBeforeNote(), changes: [], posts: [] };
    const { moved, short } = refilled;
    return {
      reply: refilledNote(refilled),
      changes: [{ action: "stock.refill", subject: `place:${placeId}`, before: null, after: { moved, short } }],
      posts: [],
    };
  });
}
