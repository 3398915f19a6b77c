import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { readyFlow } from "../flows/readyFlow.ts";

export const ready = defineCommand({
  name: "ready",
  summary: "When something would be ready if it were ordered now, and who would slip",
  options: [{ name: "text", summary: "Such as: oxtoby driver by 14:30", required: true }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ text: z.string().min(1).max(2000) }),
  run: async ({ text }, context) => readyFlow(context, text),
});
