import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";
import { firstInLine } from "../operations/firstInLine.ts";
import { note } from "../replies/card.ts";
import { stateWords } from "../replies/stateWords.ts";

export const orderFirst = defineCommand({
  name: "order first",
  summary: "Put an order first in line",
  options: [orderOption],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async ({ order: written, version }, context) =>
    changeOrderFlow(context, written, version, "order.first", (tx, order) => {
      const done = firstInLine(tx, order);
      const { number, state } = done.order;
      const reply = {
        first: note("order.first", `${number} goes first`, "good", "Whoever is later by it is told."),
        already: note("refusal", `${number} goes first already`, "attention", "Nothing was changed."),
        refused: note("refusal", `${number} is ${stateWords[state]}`, "refusal", "Only what is on the bench can go first. Nothing was changed."),
      }[done.kind];
      return { order: done.order, changed: done.kind === "first", reply };
    }),
});
