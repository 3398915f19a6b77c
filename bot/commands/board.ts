import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { boardView } from "../flows/boardView.ts";
import { benchNotes } from "../replies/benchCard.ts";

export const board = defineCommand({
  name: "board",
  summary: "What is on this truck's bench",
  options: [],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({}),
  run: async (_input, context) => (context.actor.truck === null ? benchNotes.noTruck() : boardView(context, context.actor.truck)),
});
