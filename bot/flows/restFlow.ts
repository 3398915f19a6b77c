import type { Context } from "../chat/context.ts";
import type { Reply } from "../chat/types.ts";
import { type Rest, restStep } from "../operations/restStep.ts";
import { restedNote } from "../replies/restNotes.ts";
import { changeOrderFlow } from "./changeOrderFlow.ts";

/** Pause, go on, hand back. */
export function restFlow(context: Context, rest: Rest, input: { readonly order: string; readonly version: number | null }): Reply | null {
  const { person } = context.actor;
  if (person === null) {
    throw new Error("a press has a person");
  }
  return changeOrderFlow(context, input.order, input.version, `step.${rest}`, (tx, order) => {
    const rested = restStep(tx, order, rest, person, context.now);
    return { order: rested.order, changed: rested.kind === "rested", reply: restedNote(rest, rested) };
  });
}
