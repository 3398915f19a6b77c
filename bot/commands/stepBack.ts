import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";
import { liesInput, liesOption, restFlow } from "../flows/restFlow.ts";

export const stepBack = defineCommand({
  name: "step back",
  summary: "Hand an order back: whoever is free goes on with it",
  options: [orderOption, liesOption],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, ...liesInput }),
  run: async (input, context) => restFlow(context, "handBack", input),
});
