import { z } from "zod";
import { currentEvent } from "../../db/repositories/people.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { fillFacts } from "../operations/fillFacts.ts";
import { note, reply } from "../replies/card.ts";
import { fillCard } from "../replies/fillCard.ts";

export const fill = defineCommand({
  name: "fill",
  summary: "The Monday fill: bins, totals, what is short",
  options: [{ name: "view", summary: "all, or short for what is lacking", required: false, oneOf: ["all", "short"] }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ view: z.enum(["all", "short"]).default("all") }),
  run: async ({ view }, context) => {
    const { truck } = context.actor;
    const current = truck === null ? null : context.read((reader) => currentEvent(reader, truck, context.now));
    if (truck === null || current === null) {
      return note("refusal", "This channel has no truck at an event", "attention", "Ask in a truck's channel.");
    }
    const facts = context.read((reader) => fillFacts(reader, truck, current.event.id));
    const short = facts.totals.filter(({ needed, free }) => free < needed);
    if (view === "short") {
      const lines = short.map(({ name, needed, free }) => `${name}: ${needed - free} short (${free} here, ${needed} needed)`);
      return note(
        "fill",
        short.length === 0 ? "Nothing is short for Monday" : "Short for Monday",
        short.length === 0 ? "good" : "attention",
        ...lines,
      );
    }
    return reply(fillCard(facts, current.event.name));
  },
});
