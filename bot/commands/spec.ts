import { z } from "zod";
import { id } from "../../core/kinds.ts";
import { allPlayers, personName } from "../../db/repositories/people.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import { matchPlayer } from "../boundary/playerNames.ts";
import { readClubName } from "../boundary/readClubName.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { note, reply } from "../replies/card.ts";
import { specCard } from "../replies/specCard.ts";

export const spec = defineCommand({
  name: "spec",
  summary: "What a player has in the bag, as last left on the gauge",
  options: [
    { name: "player", summary: "Player, by full name, family name or alias", required: true, takes: "player" },
    { name: "club", summary: "One club, such as driver or 7i", required: false, takes: "club" },
  ],
  roles: ["viewer", "rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ player: z.string().min(1).max(100), club: z.string().max(30).optional() }),
  run: async ({ player, club }, context) => {
    const rows = context.read(allPlayers);
    const words = player.trim().split(/\s+/);
    const last = words.length > 1 && club === undefined ? readClubName(words.at(-1) ?? "") : null;
    const who = last === null ? player : words.slice(0, -1).join(" ");
    const match = player.startsWith("id:")
      ? null
      : matchPlayer(
          who,
          rows.map((row) => ({ id: row.id, name: row.name ?? "", aliases: row.aliases })),
        );
    const wantedId = match === null ? id<"player">(Number(player.slice(3))) : match.kind === "one" ? match.player.id : null;
    const row = rows.find((known) => known.id === wantedId);
    if (row === undefined) {
      const choices = match?.kind === "several" ? match.players : match?.kind === "none" ? match.nearest : [];
      return note(
        "refusal",
        `Nobody is called ${who}`,
        "attention",
        ...(choices.length === 0 ? ["Try the family name."] : [`Meant ${choices.map(({ name }) => name).join(", ")}?`]),
      );
    }
    if (row.restrictedCode !== null && !context.actor.roles.includes("lead")) {
      return note("refusal", `${row.restrictedCode} is restricted`, "refusal", "The lead can show it.");
    }
    const live = context.read((reader) => liveSpec(reader, row.id));
    if (live === null) {
      return note(
        "spec",
        `No spec of ${row.name ?? "erased"} was ever published`,
        "attention",
        "A bag check, or a club put in the bag, publishes the first.",
      );
    }
    const wanted = club === undefined ? last : readClubName(club);
    const by = context.read((reader) => personName(reader, live.personId));
    return reply(
      specCard(
        { player: row.name ?? "erased", hand: row.hand, live, by, wanted, canSeeNotes: context.actor.roles.some((role) => role !== "viewer") },
        context.actor,
        context.now,
      ),
    );
  },
});
