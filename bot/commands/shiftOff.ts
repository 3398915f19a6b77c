import { z } from "zod";
import { readClock } from "../boundary/readClock.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderPosts } from "../flows/orderPosts.ts";
import { shiftFlow } from "../flows/shiftFlow.ts";
import { shiftOf, signOff, technicianAt } from "../operations/crew.ts";
import { shiftNotes } from "../replies/shiftNotes.ts";

export const shiftOff = defineCommand({
  name: "shift off",
  summary: "Sign off: till a time, or until the next day opens",
  options: [
    { name: "till", summary: "Back at, such as 13:30", required: false },
    { name: "person", summary: "Somebody else, by name (the lead)", required: false, takes: "person" },
  ],
  roles: ["technician", "lead"],
  audience: "channel",
  input: z.object({ till: z.string().max(40).optional(), person: z.string().max(60).optional() }),
  run: async ({ till, person }, context) => {
    const { now } = context;
    const { zone } = context.actor;
    const back = till === undefined ? null : readClock(`till ${till}`, { now, zone });
    if (back !== null && back.kind !== "at") {
      return shiftNotes.badTime(back.kind, till ?? "");
    }
    return shiftFlow(context, "shift.off", person, (tx, who) => {
      const before = technicianAt(tx, who.truck, who.id);
      if (before === null) {
        return { reply: shiftNotes.notHere(who.name), changed: false };
      }
      const { until, paused } = signOff(tx, who.truck, who.id, now, back?.at ?? null);
      return {
        reply: shiftNotes.off({ name: who.name, until, paused: paused.map(({ number }) => number) }, { now, zone }),
        changed: true,
        before: shiftOf(before, now),
        after: { until },
        posts: paused.flatMap((order) => orderPosts(tx, order, now)),
      };
    });
  },
});
