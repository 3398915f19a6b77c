import { z } from "zod";
import { requestOf } from "../../db/repositories/orders.ts";
import { readMessage } from "../boundary/readMessage.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { readingContext } from "../desk/readingContext.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { note, reply } from "../replies/card.ts";
import { staleNote } from "../replies/orderNotes.ts";
import { problemsCard } from "../replies/problemsCard.ts";

export const orderChange = defineCommand({
  name: "order change",
  summary: "Change a draft's text",
  options: [orderIn("draft"), { name: "text", summary: "The whole order anew", required: false }],
  roles: ["rep", "lead"],
  audience: "asker",
  opensForm: true,
  input: z.object({ ...orderInput, text: z.string().max(4000).optional() }),
  run: async ({ order: written, version, text }, context) => {
    const order = context.read((reader) => findOrder(reader, context, written));
    if (order.state !== "draft" || (version !== null && version !== order.version)) {
      return staleNote(order.number, order.state);
    }
    const { asWritten } = context.read((reader) => requestOf(reader, order));
    if (text === undefined) {
      const action = { command: "order change", subject: `order:${order.id}`, version: order.version };
      return {
        kind: "form",
        form: { title: `Change ${order.number}`, action, parts: [{ name: "text", label: "The order", items: [], required: true, value: asWritten }] },
      };
    }
    const reading = context.read((reader) => readMessage(text, readingContext(reader, context.actor, context.now)));
    if (reading.kind === "order") {
      return draftFlow(context, { ...reading, go: false, text, sourceKey: order.sourceKey, replaces: order, anyway: true });
    }
    return reading.kind === "problems"
      ? reply(problemsCard(reading.problems, reading.mendings, null))
      : note("order.hint", "Not read as an order", "attention", `${order.number} stays as it was.`);
  },
});
