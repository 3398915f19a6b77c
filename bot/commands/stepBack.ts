import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { liesInput, liesOption, restFlow } from "../flows/restFlow.ts";

export const stepBack = defineCommand({
  name: "step back",
  summary: "Hand an order back: whoever is free goes on with it",
  options: [orderIn("building", "finalCheck"), liesOption],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, ...liesInput }),
  run: async (input, context) => restFlow(context, "handBack", input),
});
