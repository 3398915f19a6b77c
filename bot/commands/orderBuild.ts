import { z } from "zod";
import { requestOf } from "../../db/repositories/orders.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { buildInsteadNote, staleNote } from "../replies/orderNotes.ts";

/** A club that broke: a new one like it, in place of the finished one that was offered. */
export const orderBuild = defineCommand({
  name: "order build",
  summary: "Build a new club in place of the finished one offered for a broken club",
  options: [orderIn("draft")],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async ({ order: written, version }, context) => {
    const order = context.read((reader) => findOrder(reader, context, written));
    if (order.state !== "draft" || order.kind !== "broke" || (version !== null && version !== order.version)) {
      return staleNote(order.number, order.state);
    }
    const { request, asWritten } = context.read((reader) => requestOf(reader, order));
    return draftFlow(context, {
      request: { ...request, kind: "build", like: request.like ?? { from: "gamer" }, urgent: true },
      text: asWritten,
      mendings: [],
      go: false,
      sourceKey: order.sourceKey,
      replaces: order,
      anyway: true,
      answer: buildInsteadNote(order.number),
    });
  },
});
