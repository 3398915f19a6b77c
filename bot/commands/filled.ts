import { z } from "zod";
import { id } from "../../core/kinds.ts";
import { allPlayers, currentEvent } from "../../db/repositories/people.ts";
import { addFill } from "../../db/repositories/week.ts";
import { matchPlayer } from "../boundary/playerNames.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { fillOf } from "../operations/fillFacts.ts";
import { note } from "../replies/card.ts";

export const filled = defineCommand({
  name: "filled",
  summary: "A player's bin is filled",
  options: [{ name: "argument", summary: "Which player", required: true }],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ argument: z.string().min(1).max(100) }),
  run: async ({ argument }, context) => {
    const { truck, person } = context.actor;
    const current = truck === null ? null : context.read((reader) => currentEvent(reader, truck, context.now));
    const players = context.read(allPlayers);
    const match = /^\d+$/.test(argument)
      ? null
      : matchPlayer(
          argument,
          players.map((row) => ({ id: row.id, name: row.name ?? "", aliases: row.aliases })),
        );
    const wanted = match?.kind === "one" ? match.player.id : id<"player">(Number(argument));
    const player = players.find((row) => row.id === wanted);
    if (current === null || person === null || player === undefined) {
      return note("refusal", "Whose bin? Name a player of the field, in a truck's channel", "attention", "Nothing was changed.");
    }
    return context.commit((tx) => {
      const { balls, hats, gloves } = fillOf(player);
      const isNew = addFill(tx, { eventId: current.event.id, playerId: player.id, balls, hats, gloves, personId: person, at: context.now });
      return {
        reply: isNew
          ? note("filled", `${player.name ?? "erased"}: bin filled`, "good", `${balls} balls, ${hats} hats, ${gloves} gloves`)
          : note("filled", `${player.name ?? "erased"} was filled before`, "attention", "Nothing was changed."),
        changes: isNew ? [{ action: "fill", subject: `player:${player.id}`, before: null, after: { balls, hats, gloves }, player: player.id }] : [],
        posts: [],
      };
    });
  },
});
