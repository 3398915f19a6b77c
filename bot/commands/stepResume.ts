import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { restFlow } from "../flows/restFlow.ts";

export const stepResume = defineCommand({
  name: "step resume",
  summary: "Work on a paused order goes on, in your hands",
  options: [orderIn("building", "finalCheck")],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async (input, context) => restFlow(context, "resume", input),
});
