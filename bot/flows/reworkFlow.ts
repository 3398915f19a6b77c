import { z } from "zod";
import type { OrderRow } from "../../db/repositories/orders.ts";
import type { Tx } from "../../db/write.ts";
import { readClubName } from "../boundary/readClubName.ts";
import { readStepKind, stepNames } from "../boundary/readStepKind.ts";
import type { Context } from "../chat/context.ts";
import type { Option } from "../chat/defineCommand.ts";
import type { Reply } from "../chat/types.ts";
import type { Reworked, ReworkWish } from "../operations/reworkStep.ts";
import { reworkedNote, unknownStepNote } from "../replies/reworkNotes.ts";
import { changeOrderFlow } from "./changeOrderFlow.ts";
import { orderInput, orderOption } from "./orderOptions.ts";

export const reworkOptions: readonly Option[] = [
  orderOption,
  { name: "step", summary: "Such as: glue, cut, grip", required: true },
  { name: "reason", summary: "Why, in a few words", required: false },
  { name: "club", summary: "Which club, of an order of several", required: false, takes: "club" },
];

export const reworkInput = z.object({
  ...orderInput,
  step: z.string().min(1).max(30),
  reason: z.string().max(200).nullable().default(null),
  club: z.string().max(30).nullable().default(null),
});

/** A step done again, or left out. */
export function reworkFlow(
  context: Context,
  what: "again" | "skip",
  input: z.infer<typeof reworkInput>,
  work: (tx: Tx, order: OrderRow, wish: ReworkWish) => Reworked,
): Reply | null {
  const { person } = context.actor;
  if (person === null) {
    throw new Error("a press has a person");
  }
  const step = readStepKind(input.step);
  if (step === null) {
    return unknownStepNote(input.step, stepNames);
  }
  const club = input.club === null ? null : readClubName(input.club);
  return changeOrderFlow(context, input.order, input.version, `step.${what}`, (tx, order) => {
    const done = work(tx, order, { step, club, reason: input.reason, personId: person, now: context.now });
    return { order: done.order, changed: done.kind === "reworked", reply: reworkedNote(what, done), detail: { step, club, reason: input.reason } };
  });
}
