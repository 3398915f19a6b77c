import { z } from "zod";
import { requestOf } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { note, reply } from "../replies/card.ts";
import { headsCard } from "../replies/headsCard.ts";
import { staleNote } from "../replies/orderNotes.ts";

export const orderHeads = defineCommand({
  name: "order heads",
  summary: "The other heads a draft could take",
  options: [orderIn("draft"), { name: "argument", summary: "Serial of the head to take instead", required: false, takes: "serial" }],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async ({ order: written, version, argument }, context) => {
    const order = context.read((reader) => findOrder(reader, context, written));
    if (order.state !== "draft" || (version !== null && version !== order.version)) {
      return staleNote(order.number, order.state);
    }
    const plan = context.read((reader) => sheetsOf(reader, order))[0]?.sheetPlan.plan ?? null;
    if (plan === null || plan.runnersUp.length + plan.elsewhere.length === 0) {
      return note("order.heads", `No other head fits ${order.number}`, "attention", "Change what is written to see more.");
    }
    if (argument === null) {
      return reply(headsCard(order, plan));
    }
    if (!plan.runnersUp.some(({ head }) => head.serial === argument)) {
      return note("refusal", `Head ${argument} is not among the others`, "refusal", "Choose one that is shown.");
    }
    const { request, asWritten } = context.read((reader) => requestOf(reader, order));
    return draftFlow(context, {
      request,
      text: asWritten,
      mendings: [],
      go: false,
      sourceKey: order.sourceKey,
      replaces: order,
      anyway: true,
      headSerial: argument,
      answer: note("order.heads", `${order.number} takes head ${argument}`, "plain", "Its post shows what that comes to."),
    });
  },
});
