import { z } from "zod";
import { readMessage } from "../boundary/readMessage.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { readingContext } from "../desk/readingContext.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { gaugeOf } from "../flows/gaugeOf.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { measureOrder } from "../operations/measureOrder.ts";
import { measuredNote } from "../replies/benchNotes.ts";
import { note, reply } from "../replies/card.ts";
import { problemsCard } from "../replies/problemsCard.ts";

export const measured = defineCommand({
  name: "measured",
  summary: "What the gauge says of a finished club",
  options: [orderIn("finalCheck"), { name: "text", summary: "Such as: loft 9.2 face 0.4 swing d3 length 45 1/4", required: true }],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, text: z.string().min(1).max(2000) }),
  run: async ({ order: written, version, text }, context) => {
    const { person } = context.actor;
    const whole = /^\s*measured\b/i.test(text) ? text : `measured ${written} ${text}`;
    const reading = context.read((reader) => readMessage(whole, readingContext(reader, context.actor, context.now)));
    if (reading.kind === "problems") {
      return reply(problemsCard(reading.problems, reading.mendings, null));
    }
    if (reading.kind !== "measured" || person === null) {
      return note(
        "refusal",
        "Not read as measurements",
        "attention",
        "Write for instance: measured 57 loft 9.2 face 0.4 open swing d3 length 45 1/4",
      );
    }
    return changeOrderFlow(context, written, version, "order.measured", (tx, order) => {
      const done = measureOrder(tx, order, reading.values, { personId: person, gauge: gaugeOf(tx, order.truckId), now: context.now });
      return { order: done.order, changed: done.kind === "measured", reply: measuredNote(done) };
    });
  },
});
