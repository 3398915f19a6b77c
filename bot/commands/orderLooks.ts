import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { gaugeOf } from "../flows/gaugeOf.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { looksAsWritten } from "../operations/measureOrder.ts";
import { measuredNote } from "../replies/benchNotes.ts";

/** One press for all that is looked at and not read off a gauge: logo, rib, sleeve mark, stamp. */
export const orderLooks = defineCommand({
  name: "order looks",
  summary: "The club looks as written: logo, rib, sleeve mark, stamp",
  options: [orderIn("finalCheck")],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object(orderInput),
  run: async ({ order: written, version }, context) => {
    const { person } = context.actor;
    if (person === null) {
      throw new Error("a look has a person");
    }
    return changeOrderFlow(context, written, version, "order.looks", (tx, order) => {
      const done = looksAsWritten(tx, order, { personId: person, gauge: gaugeOf(tx, order.truckId), now: context.now });
      return { order: done.order, changed: done.kind === "measured", reply: measuredNote(done) };
    });
  },
});
