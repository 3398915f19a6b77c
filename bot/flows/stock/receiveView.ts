import { readReceipt } from "../../boundary/stock/readReceipt.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { receiveStock } from "../../operations/receiveStock.ts";
import { reply } from "../../replies/card.ts";
import { receivedCard } from "../../replies/stock/receivedCard.ts";
import { stockFaultsReply } from "../../replies/stock/stockFaultsReply.ts";
import { stockViewReply } from "../../replies/stock/stockHelp.ts";
import { noTruckNote } from "../../replies/stock/stockNotes.ts";
import { knownStock } from "./knownStock.ts";
import { mayChangeStock, refuseChange, type StockView } from "./stockView.ts";

export const receiveView: StockView = {
  name: "receive",
  summary: "takes in what came, a line a part or a head, or a table",
  takes: [
    "12 x Dunlin 60 X to main rack",
    "shaft Dunlin 60 X 4 bin Oxtoby",
    "screw 4 g 10, Gorse Standard 20",
    "head 4711 Cairn right stamped 9 loft 9.1 lie 58 face 0.3 open mass 197.2 D-7",
    "kind,model,place,quantity\nshaft,Dunlin 60 X,main rack,4",
  ],
  answer: receive,
};

/** All of it or nothing, in one transaction. */
function receive(text: string, context: Context): Reply | null {
  const { truck, person } = context.actor;
  if (!mayChangeStock(context)) return refuseChange(context, "receive");
  if (truck === null || person === null) return noTruckNote();
  const reading = readReceipt(
    text,
    context.read((reader) => knownStock(reader, truck)),
    context.now,
  );
  if (reading.kind === "empty") return stockViewReply(receiveView);
  if (reading.kind === "faults") return stockFaultsReply("receive", reading.faults);
  return context.commit((tx) => {
    const received = receiveStock(tx, reading.value, truck, { personId: person, now: context.now });
    return {
      reply: reply(receivedCard(received)),
      changes: [
        ...received.parts.map(({ placeId, name, quantity }) => ({
          action: "stock.receive",
          subject: `place:${placeId}`,
          before: null,
          after: { name, quantity },
        })),
        ...received.heads.map(({ serial, model, place }) => ({
          action: "stock.receive",
          subject: `head:${serial}`,
          before: null,
          after: { model, place },
        })),
      ],
      posts: [],
    };
  });
}
