import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { moveFlow } from "../flows/moveFlow.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";

export const orderDrop = defineCommand({
  name: "order drop",
  summary: "Drop a draft",
  options: [orderIn("draft"), { name: "reason", summary: "Why, in a few words", required: false }],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, reason: z.string().max(200).nullable().default(null) }),
  run: async (input, context) => moveFlow(context, "drop", input),
});
