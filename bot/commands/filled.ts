import { z } from "zod";
import { id } from "../../core/kinds.ts";
import { allPlayers, currentEvent, fieldOf } from "../../db/repositories/people.ts";
import { matchPlayer } from "../boundary/playerNames.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { fillBin } from "../operations/fillBin.ts";
import { note } from "../replies/card.ts";

export const filled = defineCommand({
  name: "filled",
  summary: "A player's bin is filled",
  options: [{ name: "argument", summary: "Which player", required: true, takes: "player" }],
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
    const inField =
      current !== null && player !== undefined && context.read((reader) => fieldOf(reader, current.event.id)).some((row) => row.id === player.id);
    if (truck === null || current === null || person === null || player === undefined || !inField) {
      return note("refusal", "Whose bin? Name a player of the field, in a truck's channel", "attention", "Nothing was changed.");
    }
    return context.commit((tx) => {
      const done = fillBin(tx, player, { truck, event: current.event.id, person, now: context.now });
      const name = player.restrictedCode ?? player.name ?? "erased";
      if (done.kind === "before") {
        return { reply: note("filled", `${name} was filled before`, "attention", "Nothing was changed."), changes: [], posts: [] };
      }
      const { balls, hats, gloves, short } = done;
      const lines = [`${balls} balls, ${hats} hats, ${gloves} gloves`, ...short.map((row) => `Short of ${row.name}: ${row.quantity}`)];
      return {
        reply: note("filled", `${name}: bin filled`, short.length === 0 ? "good" : "attention", ...lines),
        changes: [{ action: "fill", subject: `player:${player.id}`, before: null, after: { balls, hats, gloves }, player: player.id }],
        posts: [],
      };
    });
  },
});
