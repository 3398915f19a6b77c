import { z } from "zod";
import { benchStates, ordersIn } from "../../db/repositories/orders.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { boardCard } from "../replies/boardCard.ts";
import { note, reply } from "../replies/card.ts";

export const board = defineCommand({
  name: "board",
  summary: "What is on this truck's bench",
  options: [],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({}),
  run: async (_input, context) => {
    const { truck } = context.actor;
    if (truck === null) {
      return note("refusal", "This channel has no truck", "attention", "Ask in a truck's channel.");
    }
    const rows = context.read((reader) => ordersIn(reader, truck, [...benchStates, "ready"]).map((order) => orderFacts(reader, order, context.now)));
    return reply(boardCard(rows, context.now));
  },
});
