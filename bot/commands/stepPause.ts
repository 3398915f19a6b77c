import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { liesInput, liesOption, restFlow } from "../flows/restFlow.ts";

export const stepPause = defineCommand({
  name: "step pause",
  summary: "Work on an order rests; it stays with you",
  options: [orderIn("building", "finalCheck"), liesOption],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, ...liesInput }),
  run: async (input, context) => restFlow(context, "pause", input),
});
