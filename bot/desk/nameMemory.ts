import { sql } from "drizzle-orm";
import type { ClubName, Id } from "../../core/kinds.ts";
import { type OrderRow, openStates, orderByNumber, ordersIn } from "../../db/repositories/orders.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { allPlayers, allTrucks, personName, techniciansOf } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";

/** A name and the word that stands for it where it is restricted. */
interface KnownName {
  readonly name: string;
  readonly code: string | null;
}

export interface KnownPlayer extends KnownName {
  readonly id: Id<"player">;
  readonly aliases: readonly string[];
  /** In the bag as last published. */
  readonly clubs: readonly ClubName[];
}

interface KnownOrder {
  readonly number: number;
  readonly truck: Id<"truck">;
  readonly player: Id<"player">;
  readonly kind: OrderRow["kind"];
  readonly state: OrderRow["state"];
  readonly clubs: readonly string[];
  /** The other heads a draft could take. */
  readonly heads: readonly { readonly serial: string; readonly model: string }[];
}

/** The names people may mean, as the record had them when they were last read. */
export interface KnownNames {
  /** By name. */
  readonly players: readonly KnownPlayer[];
  /** Of every bag, those in most bags first. */
  readonly clubs: readonly ClubName[];
  /** Newest first. */
  readonly orders: readonly KnownOrder[];
  readonly persons: readonly { readonly name: string; readonly truck: Id<"truck"> }[];
  readonly parts: Readonly<Record<"head" | "shaft" | "grip", readonly KnownName[]>>;
}

/** Names kept at hand for answers that cannot wait. */
export interface NameMemory {
  readonly names: () => KnownNames;
  /** Reads the names again if anything was written since. */
  readonly refresh: () => void;
}

/** Fills a memory of names from the record; whoever owns it refreshes it. */
export function nameMemory(reader: Reader): NameMemory {
  let version = versionOf(reader);
  let names = readNames(reader);
  return {
    names: () => names,
    refresh: () => {
      const now = versionOf(reader);
      if (now !== version) {
        names = readNames(reader);
        version = now;
      }
    },
  };
}

/** Grows with every row this connection writes, and changes with what another writes. */
function versionOf(reader: Reader): string {
  const own = reader.get<{ readonly rows: number }>(sql`select total_changes() as rows`);
  const others = reader.get<{ readonly data_version: number }>(sql`pragma data_version`);
  return `${own.rows} ${others.data_version}`;
}

const byName = (one: { readonly name: string }, other: { readonly name: string }): number => one.name.localeCompare(other.name, "en");

function readNames(reader: Reader): KnownNames {
  const trucks = allTrucks(reader).map(({ id }) => id);
  const models = (kind: "head" | "shaft" | "grip"): readonly KnownName[] =>
    modelsOf<{ readonly name: string }>(reader, kind)
      .map(({ name, restrictedCode }) => ({ name, code: restrictedCode }))
      .sort(byName);
  const players = allPlayers(reader)
    .flatMap(({ id, name, aliases, restrictedCode }) =>
      name === null ? [] : [{ id, name, aliases, code: restrictedCode, clubs: liveSpec(reader, id)?.bag.clubs.map(({ club }) => club) ?? [] }],
    )
    .sort(byName);
  return {
    players,
    clubs: mostPlayed(players.flatMap(({ clubs }) => clubs)),
    orders: trucks.flatMap((truck) => openOrders(reader, truck)),
    persons: trucks.flatMap((truck) => techniciansOf(reader, truck).map(({ personId }) => ({ name: personName(reader, personId), truck }))),
    parts: { head: models("head"), shaft: models("shaft"), grip: models("grip") },
  };
}

function mostPlayed(clubs: readonly ClubName[]): readonly ClubName[] {
  const counts = new Map<ClubName, number>();
  for (const club of clubs) counts.set(club, (counts.get(club) ?? 0) + 1);
  return [...counts].sort(([, one], [, other]) => other - one).map(([club]) => club);
}

/** The open orders that their number names: an order of this week hides one of an earlier week. */
function openOrders(reader: Reader, truck: Id<"truck">): readonly KnownOrder[] {
  return ordersIn(reader, truck, openStates)
    .filter((row) => orderByNumber(reader, truck, null, row.number)?.id === row.id)
    .reverse()
    .map((row) => ({
      number: row.number,
      truck,
      player: row.playerId,
      kind: row.kind,
      state: row.state,
      clubs: JSON.parse(row.clubs) as string[],
      heads: row.state === "draft" ? otherHeads(reader, row) : [],
    }));
}

const otherHeads = (reader: Reader, row: OrderRow): KnownOrder["heads"] =>
  sheetsOf(reader, row)[0]?.sheetPlan.plan?.runnersUp.map(({ head }) => ({ serial: head.serial, model: head.model.name })) ?? [];
