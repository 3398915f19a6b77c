import { z } from "zod";
import type { BroughtBy } from "../../core/buildSheet/buildRequest.ts";
import { requestOf } from "../../db/repositories/orders.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { draftFlow } from "../flows/draftFlow.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { broughtNote, staleNote } from "../replies/orderNotes.ts";

const bringers = ["player", "caddie", "rep", "inTruck"] as const satisfies readonly BroughtBy[];

/** Who brings the club an order works on. */
export const orderBring = defineCommand({
  name: "order bring",
  summary: "Say who brings the club a draft works on",
  options: [orderIn("draft"), { name: "argument", summary: `One of: ${bringers.join(", ")}`, required: true, oneOf: bringers }],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, argument: z.enum(bringers) }),
  run: async ({ order: written, version, argument }, context) => {
    const order = context.read((reader) => findOrder(reader, context, written));
    if (order.state !== "draft" || (version !== null && version !== order.version)) {
      return staleNote(order.number, order.state);
    }
    const { request, asWritten } = context.read((reader) => requestOf(reader, order));
    return draftFlow(context, {
      request: { ...request, broughtBy: argument },
      text: asWritten,
      mendings: [],
      go: false,
      sourceKey: order.sourceKey,
      replaces: order,
      anyway: true,
      answer: broughtNote(order.number, argument),
    });
  },
});
