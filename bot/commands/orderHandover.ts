import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";
import { handOver, takers } from "../operations/handOver.ts";
import { handedOverNote } from "../replies/orderNotes.ts";
import { timeText } from "../replies/shown.ts";

export const orderHandover = defineCommand({
  name: "order handover",
  summary: "Say who took a ready club",
  options: [orderOption, { name: "argument", summary: `Who took it: ${takers.join(", ")}`, required: true }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, argument: z.enum(takers) }),
  run: async ({ order: written, version, argument }, context) => {
    const { person } = context.actor;
    if (person === null) {
      throw new Error("a hand-over has a person");
    }
    return changeOrderFlow(context, written, version, "order.handover", (tx, order) => {
      const done = handOver(tx, order, argument, person, context.now);
      const waits = order.playableAt !== null && order.playableAt > context.now;
      const playable =
        waits && order.playableAt !== null
          ? `Not for full swings before ${timeText(order.playableAt, context.now, context.actor.zone)}: glue and grip still set.`
          : null;
      return { order: done.order, changed: done.kind === "handed-over", reply: handedOverNote(done, playable) };
    });
  },
});
