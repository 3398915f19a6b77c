import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { answerBag, bagAnswers } from "../operations/handOver.ts";
import { answeredNote } from "../replies/handOverNotes.ts";

export const orderBag = defineCommand({
  name: "order bag",
  summary: "Say what became of a club that is out",
  options: [orderIn("outWithPlayer"), { name: "argument", summary: `One of: ${bagAnswers.join(", ")}`, required: true, oneOf: bagAnswers }],
  roles: ["rep", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, argument: z.enum(bagAnswers) }),
  run: async ({ order: written, version, argument }, context) => {
    const { person } = context.actor;
    if (person === null) {
      throw new Error("an answer has a person");
    }
    return changeOrderFlow(context, written, version, "order.bag", (tx, order) => {
      const answered = answerBag(tx, order, argument, person, context.now);
      return { order: answered.order, changed: answered.kind !== "refused", reply: answeredNote(answered) };
    });
  },
});
