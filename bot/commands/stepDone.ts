import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { pressFlow } from "../flows/pressFlow.ts";

export const stepDone = defineCommand({
  name: "step done",
  summary: "Built: now the final check",
  options: [orderIn("building")],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async (input, context) => pressFlow(context, "done", input),
});
