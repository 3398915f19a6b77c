import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { playableWords } from "../flows/playableWords.ts";
import { handOver, takers } from "../operations/handOver.ts";
import { handedOverNote } from "../replies/handOverNotes.ts";

export const orderHandover = defineCommand({
  name: "order handover",
  summary: "Say who took a ready club",
  options: [
    orderIn("ready"),
    { name: "argument", summary: `Who took it: ${takers.join(", ")}`, required: true, oneOf: takers },
    { name: "reason", summary: "The lead's reason to let out a head that is not on the list for play", required: false },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, argument: z.enum(takers), reason: z.string().min(3).max(200).nullable().default(null) }),
  run: async ({ order: written, version, argument, reason }, context) => {
    const { person, roles } = context.actor;
    const exception = roles.includes("lead") ? reason : null;
    if (person === null) {
      throw new Error("a hand-over has a person");
    }
    return changeOrderFlow(context, written, version, "order.handover", (tx, order) => {
      const done = handOver(tx, order, argument, { personId: person, now: context.now, exception });
      return { order: done.order, changed: done.kind === "handed-over", reply: handedOverNote(done, argument, playableWords(order, context)) };
    });
  },
});
