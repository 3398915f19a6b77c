import { z } from "zod";
import { finishMarking } from "../../db/repositories/week.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { note } from "../replies/card.ts";
import { clubWords } from "../replies/shown.ts";

export const stamped = defineCommand({
  name: "stamped",
  summary: "An owed marking is done",
  options: [{ name: "argument", summary: "Which, by a press on the list of what is owed", required: true }],
  roles: ["technician", "lead"],
  audience: "asker",
  input: z.object({ argument: z.string().regex(/^\d{1,9}$/) }),
  run: async ({ argument }, context) => {
    const { person } = context.actor;
    if (person === null) {
      throw new Error("a marking is done by a person");
    }
    return context.commit((tx) => {
      const done = finishMarking(tx, Number(argument), person, context.now);
      return {
        reply:
          done === null
            ? note("stamped", "That marking is not owed any more", "attention", "Nothing was changed.")
            : note("stamped", `Stamped: ${clubWords(done.club)} ${done.text}`, "good"),
        changes:
          done === null ? [] : [{ action: "marking.done", subject: `marking:${done.id}`, before: "owed", after: "done", player: done.playerId }],
        posts: [],
      };
    });
  },
});
