import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { boardView } from "../flows/boardView.ts";
import { nextFacts } from "../operations/nextFacts.ts";
import { promiseRecordFacts } from "../operations/promiseRecord.ts";
import { benchCard, benchNotes } from "../replies/benchCard.ts";
import { reply } from "../replies/card.ts";
import { recordCard } from "../replies/recordCard.ts";

export const bench = defineCommand({
  name: "bench",
  summary: "What is next at the bench, the board of the day, promises kept",
  options: [{ name: "view", summary: "next, board or record; next when left out", required: false, oneOf: ["next", "board", "record"] }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ view: z.enum(["next", "board", "record"]).default("next") }),
  run: async ({ view }, context) => {
    const { truck, person, roles } = context.actor;
    if (truck === null) {
      return benchNotes.noTruck();
    }
    switch (view) {
      case "board":
        return boardView(context, truck);
      case "record":
        return reply(recordCard(context.read((reader) => promiseRecordFacts(reader, truck, context.now))));
      case "next": {
        const facts = context.read((reader) => nextFacts(reader, truck, context.now));
        return facts.technicians.length === 0
          ? benchNotes.nobody()
          : reply(benchCard(facts, { person, isTechnician: roles.includes("technician") }, context.now));
      }
    }
  },
});
