import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { moveFlow } from "../flows/moveFlow.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";

export const orderResume = defineCommand({
  name: "order resume",
  summary: "Let a held order go on",
  options: [orderOption, { name: "reason", summary: "Why, in a few words", required: false }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, reason: z.string().max(200).nullable().default(null) }),
  run: async (input, context) => moveFlow(context, "resume", input),
});
