import { defineCommand } from "../chat/defineCommand.ts";
import { reworkFlow, reworkInput, reworkOptions } from "../flows/reworkFlow.ts";
import { repeatStep } from "../operations/reworkStep.ts";

export const stepAgain = defineCommand({
  name: "step again",
  summary: "A step has to be done again, such as a new glue or a second cut",
  options: reworkOptions,
  roles: ["technician", "lead"],
  audience: "asker",
  input: reworkInput,
  run: async (input, context) => reworkFlow(context, "again", input, repeatStep),
});
