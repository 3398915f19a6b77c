import { rankTwins } from "../../../core/bag/rankTwins.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import { type ClubName, clubFamily } from "../../../core/kinds.ts";
import { currentEvent, fieldOf } from "../../../db/repositories/people.ts";
import { type MatchWritten, readMatchWanted } from "../../boundary/match/readMatchWanted.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { clubToMatch, headsToMatch, type MatchFacts, matchFacts, playersWithBackups } from "../../operations/matchFacts.ts";
import { checkTolerances, selectionTolerances } from "../../operations/shopTolerances.ts";
import { restrictedClubReply } from "../../replies/calc/clubRefusals.ts";
import { backupsReply } from "../../replies/match/backupsReply.ts";
import { noSpecReply, noSuchPlayerReply, notInBagReply, whichClubReply, whoseReply } from "../../replies/match/matchRefusals.ts";
import type { MatchedClub, MatchReader } from "../../replies/match/matchTypes.ts";
import { nearestReply } from "../../replies/match/nearestReply.ts";
import { namedPlayers } from "../calc/namedPlayers.ts";
import { nearestHeads } from "./nearestHeads.ts";

type Facts = MatchFacts & { readonly bag: NonNullable<MatchFacts["bag"]> };

/** Players to choose from when nobody was named: those of this week's field who have a backup. */
function likelyPlayers({ actor: { truck }, now, read }: Context, players: ReturnType<typeof namedPlayers>): ReturnType<typeof namedPlayers> {
  const event = truck === null ? null : read((reader) => currentEvent(reader, truck, now))?.event;
  if (event === null || event === undefined) return [];
  const field = new Set(read((reader) => fieldOf(reader, event.id)).map(({ id }) => id));
  const backed = read((reader) => playersWithBackups(reader, players));
  return players.filter(({ id }) => field.has(id) && backed.has(id)).sort((one, other) => (one.name < other.name ? -1 : 1));
}

const readerOf = ({ actor, now }: Context): MatchReader => ({ unit: actor.lengthUnit, now });

/** The list for play is of driver heads. */
function matchedClub(facts: Facts, gamer: SpecClub, context: Context): MatchedClub {
  const { finished } = context.read((reader) => clubToMatch(reader, facts.player.id, gamer.club));
  return {
    club: gamer.club,
    gamer,
    finished: rankTwins(gamer, finished, { tolerances: context.read(checkTolerances) }),
    listed: clubFamily(gamer.club) === "driver" ? facts.listed : null,
  };
}

function ofClub(facts: Facts, club: ClubName, asksBackup: boolean, context: Context): Reply {
  const { player, bag } = facts;
  const gamer = bag.clubs.find((known) => known.club === club);
  if (gamer === undefined) {
    return notInBagReply(
      player,
      club,
      bag.clubs.map((known) => known.club),
    );
  }
  const { truck } = context.actor;
  const heads =
    truck === null
      ? null
      : nearestHeads(
          gamer,
          player.hand,
          context.read((reader) => headsToMatch(reader, player.id, truck)),
          { choosing: context.read(selectionTolerances), checking: context.read(checkTolerances) },
        );
  return nearestReply({ player, matched: matchedClub(facts, gamer, context), heads, asksBackup }, readerOf(context));
}

function ofAllBackups(facts: Facts, context: Context): Reply {
  const { player, bag } = facts;
  const backed = new Set(bag.backups.map(({ club }) => club));
  const gamers = bag.clubs.filter(({ club }) => backed.has(club));
  return backupsReply(
    {
      player,
      matched: gamers.map((gamer) => matchedClub(facts, gamer, context)),
      withoutGamer: [...backed].filter((club) => gamers.every((gamer) => gamer.club !== club)),
      clubs: bag.clubs.map(({ club }) => club),
    },
    readerOf(context),
  );
}

/** What stands nearest to a player's gamer: finished clubs, then measured heads in reach. */
export function matchFlow(written: MatchWritten, context: Context): Reply {
  const players = namedPlayers(context);
  const wanted = readMatchWanted(written, players);
  if (wanted.player.kind === "ask") {
    const { choices } = wanted.player;
    const name = wanted.player.written !== "" || choices.length > 0 ? wanted.player.written : (written.player ?? "").trim().replace(/^id:.*/, "");
    const behind = [wanted.club.kind === "one" ? wanted.club.club : "", wanted.asksBackup ? "backup" : ""].filter((word) => word !== "").join(" ");
    return whoseReply(name, choices.length > 0 || name !== "" ? choices : likelyPlayers(context, players), behind);
  }
  const playerId = wanted.player.id;
  const facts = context.read((reader) => matchFacts(reader, playerId, context.actor.truck, context.now));
  if (facts === null) return noSuchPlayerReply();
  if (facts.isRestricted && !context.actor.roles.includes("lead")) return restrictedClubReply();
  const { bag } = facts;
  if (bag === null) return noSpecReply(facts.player.shown);
  const { club } = wanted;
  if (club.kind === "one") return ofClub({ ...facts, bag }, club.club, wanted.asksBackup, context);
  return club.written === ""
    ? ofAllBackups({ ...facts, bag }, context)
    : whichClubReply(
        facts.player,
        club.written,
        bag.clubs.map((known) => known.club),
      );
}
