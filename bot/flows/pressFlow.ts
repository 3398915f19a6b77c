import type { Context } from "../chat/context.ts";
import type { Reply } from "../chat/types.ts";
import { type Press, pressStep } from "../operations/pressStep.ts";
import { pressedNote } from "../replies/benchNotes.ts";
import { changeOrderFlow } from "./changeOrderFlow.ts";

/** One of the technician's three presses. */
export function pressFlow(context: Context, press: Press, input: { readonly order: string; readonly version: number | null }): Reply | null {
  const { person } = context.actor;
  if (person === null) {
    throw new Error("a press has a person");
  }
  return changeOrderFlow(context, input.order, input.version, `step.${press}`, (tx, order) => {
    const pressed = pressStep(tx, order, press, person, context.now);
    return { order: pressed.order, changed: pressed.kind === "pressed", reply: pressedNote(press, pressed) };
  });
}
