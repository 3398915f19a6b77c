import { z } from "zod";
import { id } from "../../core/kinds.ts";
import { openOrdersOf } from "../../db/repositories/orders.ts";
import { allPlayers } from "../../db/repositories/people.ts";
import { matchPlayer } from "../boundary/playerNames.ts";
import { readClubName } from "../boundary/readClubName.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { note, reply } from "../replies/card.ts";
import { orderCard } from "../replies/orderCard.ts";
import { clubWords } from "../replies/shown.ts";

export const where = defineCommand({
  name: "where",
  summary: "How an order or a player's club stands",
  options: [
    { name: "what", summary: "Order number", required: false, takes: "order" },
    { name: "player", summary: "Player", required: false, takes: "player" },
    { name: "club", summary: "Club, such as driver or 7i", required: false, takes: "club" },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ what: z.string().max(100).optional(), player: z.string().max(100).optional(), club: z.string().max(30).optional() }),
  run: async ({ what, player, club }, context) => {
    if (what !== undefined) {
      const order = context.read((reader) => findOrder(reader, context, what));
      return reply(
        orderCard(
          context.read((reader) => orderFacts(reader, order, context.now)),
          context.now,
        ),
      );
    }
    const players = context.read(allPlayers).map((row) => ({ id: row.id, name: row.name ?? "", aliases: row.aliases }));
    const playerId = player?.startsWith("id:") ? id<"player">(Number(player.slice(3))) : null;
    const match = player === undefined || playerId !== null ? null : matchPlayer(player, players);
    const known = players.find((row) => row.id === playerId) ?? (match?.kind === "one" ? match.player : undefined);
    if (known === undefined) {
      return note("refusal", "Whose? Name an order or a player", "attention", "Such as: where 57, or where toll driver");
    }
    const wanted = club === undefined ? null : readClubName(club);
    const orders = context
      .read((reader) => openOrdersOf(reader, known.id))
      .filter((order) => wanted === null || (JSON.parse(order.clubs) as string[]).includes(wanted));
    const [newest] = orders;
    return newest === undefined
      ? note(
          "where",
          `Nothing open for ${known.name}${wanted === null ? "" : `, ${clubWords(wanted)}`}`,
          "plain",
          "The live spec shows what is in the bag.",
        )
      : reply(
          orderCard(
            context.read((reader) => orderFacts(reader, newest, context.now)),
            context.now,
          ),
        );
  },
});
