import type { ClubName, Id } from "../../../core/kinds.ts";
import type { Card, Reply } from "../../chat/types.ts";
import { card, line, note, reply } from "../card.ts";
import { clubWords } from "../shown.ts";

interface NamedId {
  readonly id: Id<"player">;
  readonly name: string;
}

/** The chat takes no more in one list. */
const MOST_CHOICES = 25;

/** Clubs of a bag to choose from; nothing when there are none. */
export const clubChoices = (player: Id<"player">, clubs: readonly ClubName[]): Card["choices"] =>
  clubs.length === 0
    ? null
    : {
        label: "Club",
        action: { command: "match", subject: `player:${player}`, version: 0 },
        items: [...new Set(clubs)].slice(0, MOST_CHOICES).map((club) => ({ label: clubWords(club), value: club })),
      };

/** `behind`: what else was said, so that a choice of the player keeps it. */
export function whoseReply(written: string, players: readonly NamedId[], behind: string): Reply {
  const names = players.slice(0, MOST_CHOICES);
  return reply(
    card({
      kind: "refusal",
      title: written === "" ? "Whose club?" : `Nobody is called ${written}`,
      tone: "attention",
      lines: [
        line(names.length === 0 ? "Name the player and the club, such as: oxtoby driver" : `Meant ${names.map(({ name }) => name).join(", ")}?`),
      ],
      choices:
        names.length === 0
          ? null
          : {
              label: "Player",
              action: { command: "match", subject: "match:0", version: 0 },
              items: names.map(({ id, name }) => ({ label: name, value: `id:${id} ${behind}`.trim() })),
            },
    }),
  );
}

export const noSuchPlayerReply = (): Reply => note("refusal", "No such player", "refusal", "Name the player, such as: oxtoby driver");

export const noSpecReply = (shown: string): Reply =>
  note("match", `No spec of ${shown} was ever published`, "attention", "A bag check, or a club put in the bag, publishes the first.");

const listed = (clubs: readonly ClubName[]): string => (clubs.length === 0 ? "The bag is empty." : `In the bag: ${clubs.map(clubWords).join(", ")}`);

export function notInBagReply(player: { readonly id: Id<"player">; readonly shown: string }, club: ClubName, clubs: readonly ClubName[]): Reply {
  return reply(
    card({
      kind: "refusal",
      title: `No ${clubWords(club)} in ${player.shown}'s bag`,
      tone: "attention",
      lines: [line(listed(clubs))],
      choices: clubChoices(player.id, clubs),
    }),
  );
}

export function whichClubReply(player: { readonly id: Id<"player">; readonly shown: string }, written: string, clubs: readonly ClubName[]): Reply {
  return reply(
    card({
      kind: "refusal",
      title: `No one club is called ${written}`,
      tone: "attention",
      lines: [line(listed(clubs))],
      choices: clubChoices(player.id, clubs),
    }),
  );
}
