import { clubAt } from "./clubAt.ts";
import { NO_BAG } from "./fillSets.ts";
import { nearestNames } from "./nearestNames.ts";
import { ask, asOptions, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { playersAt } from "./playerNames.ts";
import type { Place } from "./reading.ts";

const FURTHEST_PLAYER_WORD = 60;

export const clubChoices: readonly string[] = ["driver", "3w", "5w", "4h", "7i", "pw", "sw", "putter"];

function wholeWords(pad: Notepad): Place {
  return placeOf(pad, 0, Math.max(1, Math.min(pad.end, pad.kind === null ? 1 : 2)));
}

export function askMissing(pad: Notepad): void {
  if (pad.player === null && !pad.playerAsked) askPlayer(pad);
  if (pad.clubs.length === 0 && !pad.clubAsked) {
    const place = pad.player === null ? wholeWords(pad) : playerPlace(pad);
    const before = pad.text.slice(place.from, place.to);
    ask(
      pad,
      "which-club",
      place,
      pad.kind === "check" ? NO_BAG : clubChoices.join(", "),
      clubChoices.map((club) => ({ label: club, replacement: `${before} ${club}` })),
    );
  }
  const leans = pad.leaning !== null && pad.like === null && (pad.kind === null || pad.kind === "build");
  if (leans && pad.leaning !== null) {
    const written = pad.text.slice(pad.leaning.from, pad.leaning.to);
    const options = ["like gamer", "like backup"].map((like) => ({ label: like, replacement: `${written} ${like}` }));
    ask(pad, "needs-like", pad.leaning, "like gamer, like backup or like order 57", options);
  }
}

/** Where the player is written: found again, because a place is shown only when something is missing. */
function playerPlace(pad: Notepad): Place {
  for (let at = 0; at < Math.min(pad.end, FURTHEST_PLAYER_WORD); at += 1) {
    const hit = playersAt(pad.words, at, pad.context.players);
    if (hit?.players.some((player) => player.id === pad.player?.id)) return placeOf(pad, at, hit.next);
  }
  return pad.mendings.find((mending) => mending.read === pad.player?.name)?.place ?? wholeWords(pad);
}

/** An unread word in the player's place is asked as an unknown player, else the player is missing. */
function askPlayer(pad: Notepad): void {
  const index = pad.unread.findIndex(({ at }) => pad.kind !== null && isPlayersPlace(pad, at));
  const unread = pad.unread[index];
  if (unread === undefined) {
    ask(pad, "which-player", wholeWords(pad), "a player's name");
    return;
  }
  let count = 1;
  while (pad.unread[index + count]?.at === unread.at + count) count += 1;
  pad.unread.splice(index, count);
  const nearest = nearestNames(wordAt(pad, unread.at), pad.context.players);
  ask(pad, "unknown-player", placeOf(pad, unread.at, unread.at + count), nearest.join(", ") || "a player's name", asOptions(nearest));
}

const isPlayersPlace = (pad: Notepad, at: number): boolean => {
  const before = wordAt(pad, at - 1);
  return at <= 2 || before === "for" || clubAt(pad.words, at + 1) !== null;
};
