import { z } from "zod";
import { currentEvent } from "../../db/repositories/people.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { owedFacts } from "../operations/owedFacts.ts";
import { reply } from "../replies/card.ts";
import { owedCard } from "../replies/owedCard.ts";

export const owed = defineCommand({
  name: "owed",
  summary: "Markings owed before the truck leaves",
  options: [],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({}),
  run: async (_input, context) => {
    const { truck } = context.actor;
    const current = truck === null ? null : context.read((reader) => currentEvent(reader, truck, context.now));
    return reply(owedCard(context.read((reader) => owedFacts(reader, current?.event.id ?? null))));
  },
});
