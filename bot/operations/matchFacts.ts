import type { FinishedClub } from "../../core/bag/finishedClub.ts";
import type { Bag, SpecClub } from "../../core/bag/specClub.ts";
import type { PartsInReach, SleeveModel } from "../../core/buildSheet/parts.ts";
import type { ClubName, Hand, Id, Instant } from "../../core/kinds.ts";
import { headsInOthersBins } from "../../db/repositories/heads.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { partsInReach } from "../../db/repositories/partsInReach.ts";
import { currentEvent, playerById } from "../../db/repositories/people.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import { finishedClubs } from "./finishedClubs.ts";

/** Heads that may be built with, with the sleeves and screws that go with them. */
export type HeadsToMatch = Pick<PartsInReach, "heads" | "weights"> & { readonly sleeves: readonly SleeveModel[] };

export interface MatchFacts {
  readonly player: { readonly id: Id<"player">; readonly shown: string; readonly hand: Hand };
  readonly isRestricted: boolean;
  /** Null when no spec was ever published. */
  readonly bag: Bag | null;
  /** What the list for play says of each head model; null where the current event keeps none. */
  readonly listed: ReadonlyMap<string, boolean | null> | null;
}

/** One place in the bag: what is played, and what is finished besides. */
interface ClubToMatch {
  readonly gamer: SpecClub | null;
  readonly finished: readonly FinishedClub[];
}

/** @returns the player as shown, the live bag and the list for play; null when there is no such player */
export function matchFacts(reader: Reader, playerId: Id<"player">, truckId: Id<"truck"> | null, now: Instant): MatchFacts | null {
  const row = playerById(reader, playerId);
  if (row === null || row.erasedAt !== null) {
    return null;
  }
  const keepsList = truckId !== null && currentEvent(reader, truckId, now)?.event.keepsListForPlay === true;
  const models = modelsOf<{ readonly name: string; readonly listedForPlay?: boolean | null }>(reader, "head");
  return {
    player: { id: playerId, shown: row.restrictedCode ?? row.name ?? "erased", hand: row.hand },
    isRestricted: row.restrictedCode !== null,
    bag: liveSpec(reader, playerId)?.bag ?? null,
    listed: keepsList ? new Map(models.map(({ name, listedForPlay }) => [name, listedForPlay ?? null])) : null,
  };
}

/** What is held against each other for one place in the bag. */
export function clubToMatch(reader: Reader, playerId: Id<"player">, club: ClubName): ClubToMatch {
  const gamer = liveSpec(reader, playerId)?.bag.clubs.find((known) => known.club === club) ?? null;
  return { gamer, finished: finishedClubs(reader, playerId, club) };
}

/** Heads free here and elsewhere: what lies in another player's bin is left alone. */
export function headsToMatch(reader: Reader, playerId: Id<"player">, truckId: Id<"truck">): HeadsToMatch {
  const parts = partsInReach(reader, { truckId, playerId });
  const others = headsInOthersBins(reader, playerId);
  const sleeves = [...parts.sleeves, ...(parts.elsewhere?.sleeves ?? [])].map(({ model }) => model);
  return {
    heads: parts.heads.filter(({ id }) => !others.has(id)),
    weights: parts.weights,
    sleeves: [...new Map(sleeves.map((sleeve) => [sleeve.id, sleeve])).values()],
  };
}

/** Those of the players who have a backup on record. */
export function playersWithBackups(reader: Reader, players: readonly { readonly id: Id<"player"> }[]): ReadonlySet<Id<"player">> {
  return new Set(players.filter(({ id }) => (liveSpec(reader, id)?.bag.backups.length ?? 0) > 0).map(({ id }) => id));
}
