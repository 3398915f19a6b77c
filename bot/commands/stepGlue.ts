import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { pressFlow } from "../flows/pressFlow.ts";

export const stepGlue = defineCommand({
  name: "step glue",
  summary: "The glue is on",
  options: [orderIn("building")],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async (input, context) => pressFlow(context, "glueOn", input),
});
