import { z } from "zod";
import { readClock } from "../boundary/readClock.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { moveFlow } from "../flows/moveFlow.ts";
import { orderInput, orderOption } from "../flows/orderOptions.ts";

export const orderHold = defineCommand({
  name: "order hold",
  summary: "Hold an order, with a reason",
  options: [orderOption, { name: "reason", summary: "Why, such as: till 14:00 short of a ferrule", required: false }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ ...orderInput, reason: z.string().max(200).nullable().default(null) }),
  run: async (input, context) => {
    const read =
      input.reason === null || !/^\s*(till?|until)\b/i.test(input.reason)
        ? null
        : readClock(input.reason, { now: context.now, zone: context.actor.zone });
    return read?.kind === "at"
      ? moveFlow(context, "hold", { ...input, reason: read.rest === "" ? null : read.rest, till: read.at })
      : moveFlow(context, "hold", input);
  },
});
