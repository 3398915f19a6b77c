import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { reply } from "../replies/card.ts";
import { printCard } from "../replies/printCard.ts";

export const orderPrint = defineCommand({
  name: "order print",
  summary: "An order's build sheet as one page to print",
  options: [orderOption],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async ({ order }, context) => {
    const facts = context.read((reader) => orderFacts(reader, findOrder(reader, context, order), context.now));
    return reply(printCard(facts, context.now));
  },
});
