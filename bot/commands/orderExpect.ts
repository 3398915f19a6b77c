import { z } from "zod";
import { changeOrder, requestOf, touchBench } from "../../db/repositories/orders.ts";
import { readClock } from "../boundary/readClock.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";
import { awaitsClub } from "../operations/awaitsClub.ts";
import { expectNotes } from "../replies/expectNotes.ts";
import { shiftNotes } from "../replies/shiftNotes.ts";

/** Times can be given before the club or the part is there; a promise only then. */
export const orderExpect = defineCommand({
  name: "order expect",
  summary: "Say when the club or a missing part comes, such as: 57 comes at 14:00",
  options: [orderOption, { name: "time", summary: "Such as 14:00, or none", required: true }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, time: z.string().min(1).max(60) }),
  run: async ({ order: written, version, time }, context) => {
    const clock = { now: context.now, zone: context.actor.zone };
    const read = time.trim().toLowerCase() === "none" ? null : readClock(`at ${time}`, clock);
    if (read !== null && read.kind !== "at") {
      return shiftNotes.badTime(read.kind, time);
    }
    return changeOrderFlow(context, written, version, "order.expect", (tx, order) => {
      const { request } = requestOf(tx, order);
      if (order.heldReason === null && !(order.state === "confirmed" && awaitsClub(request, order))) {
        return { order, changed: false, reply: expectNotes.notAwaited(order.number) };
      }
      touchBench(tx, order.truckId);
      const changed = changeOrder(tx, order.id, { expectedAt: read?.at ?? null });
      return { order: changed, changed: true, reply: expectNotes.expected(order.number, read?.at ?? null, context.now, clock.zone) };
    });
  },
});
