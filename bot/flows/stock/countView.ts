import type { Tx } from "../../../db/write.ts";
import { readCount } from "../../boundary/stock/readCount.ts";
import type { Context, Post } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { type Counted, countStock } from "../../operations/countStock.ts";
import { orderFacts } from "../../operations/orderFacts.ts";
import { reply } from "../../replies/card.ts";
import { countedCard } from "../../replies/stock/countedCard.ts";
import { partGoneCall } from "../../replies/stock/partGoneCall.ts";
import { stockFaultsReply } from "../../replies/stock/stockFaultsReply.ts";
import { stockViewReply } from "../../replies/stock/stockHelp.ts";
import { noTruckNote } from "../../replies/stock/stockNotes.ts";
import { orderPosts } from "../orderPosts.ts";
import { knownStock } from "./knownStock.ts";
import { mayChangeStock, refuseChange, type StockView } from "./stockView.ts";

export const countView: StockView = {
  name: "count",
  summary: "sets the record right by what was counted",
  takes: ["D-7 0417 0422 0588", "D-7 empty", "main rack dunlin 60 x 7, gorse standard 12", "place,model,quantity\nmain rack,Dunlin 60 X,7"],
  answer: count,
};

function count(text: string, context: Context): Reply | null {
  const { truck, person } = context.actor;
  if (!mayChangeStock(context)) return refuseChange(context, "count");
  if (truck === null || person === null) return noTruckNote();
  const reading = readCount(
    text,
    context.read((reader) => knownStock(reader, truck)),
  );
  if (reading.kind === "empty") return stockViewReply(countView);
  if (reading.kind === "faults") return stockFaultsReply("count", reading.faults);
  return context.commit((tx) => {
    const counted = countStock(tx, reading.value, truck, { personId: person, now: context.now });
    return {
      reply: reply(countedCard(counted)),
      changes: changesOf(counted),
      posts: counted.replanned.flatMap((replanned) => replannedPosts(tx, replanned, context)),
    };
  });
}

const changesOf = ({ parts, heads, replanned }: Counted) => [
  ...parts
    .filter(({ onRecordCount, countedCount }) => onRecordCount !== countedCount)
    .map(({ placeId, name, onRecordCount, countedCount }) => ({
      action: "stock.count",
      subject: `place:${placeId}`,
      before: { name, quantity: onRecordCount },
      after: { name, quantity: countedCount },
    })),
  ...heads.map(({ headId, from, to }) => ({ action: "stock.count", subject: `head:${headId}`, before: { place: from }, after: { place: to } })),
  ...replanned.map(({ order, gone }) => ({
    action: "order.replan",
    subject: `order:${order.id}`,
    before: { state: "confirmed", gone },
    after: { state: order.state },
    player: order.playerId,
  })),
];

/** The order's own post as it is now, and a call to its rep. */
function replannedPosts(tx: Tx, { order, gone }: Counted["replanned"][number], { now }: Context): readonly Post[] {
  const call: Post = { channel: order.channel, key: `gone:${order.id}:${order.version}`, card: partGoneCall(orderFacts(tx, order, now), gone) };
  return [...orderPosts(tx, order, now), call];
}
