import { z } from "zod";
import type { Context } from "../chat/context.ts";
import type { Option } from "../chat/defineCommand.ts";
import type { Reply } from "../chat/types.ts";
import { type Rest, restStep } from "../operations/restStep.ts";
import { restedNote } from "../replies/restNotes.ts";
import { changeOrderFlow } from "./changeOrderFlow.ts";

export const liesOption: Option = { name: "lies", summary: "Where it lies meanwhile, such as: rack 2, left", required: false };
export const liesInput = {
  lies: z
    .string()
    .trim()
    .max(60)
    .nullable()
    .default(null)
    .transform((text) => text || null),
};

/** Pause, go on, hand back. */
export function restFlow(
  context: Context,
  rest: Rest,
  input: { readonly order: string; readonly version: number | null; readonly lies?: string | null },
): Reply | null {
  const { person } = context.actor;
  if (person === null) {
    throw new Error("a press has a person");
  }
  return changeOrderFlow(context, input.order, input.version, `step.${rest}`, (tx, order) => {
    const lies = input.lies ?? null;
    const rested = restStep(tx, order, rest, { personId: person, now: context.now, lies });
    return { order: rested.order, changed: rested.kind === "rested", reply: restedNote(rest, rested, lies), detail: { lies } };
  });
}
