import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { matchFlow } from "../flows/match/matchFlow.ts";

export const match = defineCommand({
  name: "match",
  summary: "The finished clubs and heads nearest to a player's gamer; whether the backup can go in",
  options: [
    { name: "player", summary: "Player, by full name, family name or alias", required: false, takes: "player" },
    { name: "club", summary: "Club, such as driver or 7i; without it all backups", required: false, takes: "club" },
    { name: "text", summary: "Or typed freely: oxtoby driver; can his backup go in?", required: false },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({
    player: z.string().max(100).optional(),
    club: z.string().max(30).optional(),
    text: z.string().max(2000).optional(),
    argument: z.string().max(100).optional(),
  }),
  run: async ({ player, club, text, argument }, context) => matchFlow({ player, club, text: text ?? argument }, context),
});
