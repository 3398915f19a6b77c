import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { shiftFlow } from "../flows/shiftFlow.ts";
import { shiftOf, signOn, technicianAt } from "../operations/crew.ts";
import { shiftNotes } from "../replies/shiftNotes.ts";

export const shiftOn = defineCommand({
  name: "shift on",
  summary: "Sign on to this truck's bench",
  options: [{ name: "person", summary: "Somebody else, by name (the lead)", required: false, takes: "person" }],
  roles: ["technician", "lead"],
  audience: "channel",
  input: z.object({ person: z.string().max(60).optional() }),
  run: async ({ person }, context) =>
    shiftFlow(context, "shift.on", person, (tx, who) => {
      const before = technicianAt(tx, who.truck, who.id);
      signOn(tx, who.truck, who.id, context.now);
      return { reply: shiftNotes.on(who.name), changed: true, before: shiftOf(before, context.now), after: "on" };
    }),
});
