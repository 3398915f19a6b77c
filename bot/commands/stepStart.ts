import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { pressFlow } from "../flows/pressFlow.ts";

export const stepStart = defineCommand({
  name: "step start",
  summary: "Start building an order",
  options: [orderIn("confirmed")],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async (input, context) => pressFlow(context, "start", input),
});
