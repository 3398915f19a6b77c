import { defineCommand } from "../chat/defineCommand.ts";
import { reworkFlow, reworkInput, reworkOptions } from "../flows/reworkFlow.ts";
import { skipStep } from "../operations/reworkStep.ts";

export const stepSkip = defineCommand({
  name: "step skip",
  summary: "A step is not needed on this club",
  options: reworkOptions,
  roles: ["technician", "lead"],
  audience: "asker",
  input: reworkInput,
  run: async (input, context) => reworkFlow(context, "skip", input, skipStep),
});
