import { and, asc, eq, gte } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import {
  channel,
  event,
  eventPlayer,
  opening,
  person,
  personIdentity,
  player,
  playerAlias,
  teeTime,
  truck,
  truckEvent,
  truckTechnician,
} from "../schema/people.ts";
import type { Reader, Tx } from "../write.ts";

export type ChannelRow = typeof channel.$inferSelect;
type EventRow = typeof event.$inferSelect;
export type PlayerRow = typeof player.$inferSelect;

/** The event a truck serves now, with its arrival and the moment it leaves. */
export interface CurrentEvent {
  readonly event: EventRow;
  readonly arrivesAt: Instant;
  readonly rollOutAt: Instant;
}

/**
 * Finds a person by what a platform calls them.
 *
 * @returns the person and what the rehearsal says of their roles, or null when nobody here has that name
 */
export function personByIdentity(reader: Reader, platform: string, platformUserId: string) {
  return (
    reader
      .select({ id: person.id, name: person.name, zone: person.zone, lengthUnit: person.lengthUnit, rehearsalRoles: personIdentity.rehearsalRoles })
      .from(personIdentity)
      .innerJoin(person, eq(person.id, personIdentity.personId))
      .where(and(eq(personIdentity.platform, platform), eq(personIdentity.platformUserId, platformUserId)))
      .get() ?? null
  );
}

/** Lists everyone known to a platform, with the roles the rehearsal gives them as JSON. */
export function identitiesOf(reader: Reader, platform: string) {
  return reader
    .select({ platformUserId: personIdentity.platformUserId, rehearsalRoles: personIdentity.rehearsalRoles, name: person.name, zone: person.zone })
    .from(personIdentity)
    .innerJoin(person, eq(person.id, personIdentity.personId))
    .where(eq(personIdentity.platform, platform))
    .orderBy(asc(person.id))
    .all();
}

/** @returns the person's name, or `erased` */
export function personName(reader: Reader, id: Id<"person">): string {
  return reader.select({ name: person.name }).from(person).where(eq(person.id, id)).get()?.name ?? "erased";
}

/** @returns the channel as set up, or null when the bot does not watch it */
export function channelByName(reader: Reader, name: string): ChannelRow | null {
  return reader.select().from(channel).where(eq(channel.name, name)).get() ?? null;
}

/** Lists every watched channel. */
export function allChannels(reader: Reader): readonly ChannelRow[] {
  return reader.select().from(channel).orderBy(asc(channel.name)).all();
}

/** @returns the truck's channel for a purpose, or null when none is set up */
export function truckChannel(reader: Reader, truckId: Id<"truck">, purpose: ChannelRow["purpose"]): string | null {
  return (
    reader
      .select({ name: channel.name })
      .from(channel)
      .where(and(eq(channel.truckId, truckId), eq(channel.purpose, purpose)))
      .get()?.name ?? null
  );
}

/** Lists all trucks. */
export function allTrucks(reader: Reader) {
  return reader.select().from(truck).orderBy(asc(truck.id)).all();
}

/**
 * Finds the event a truck serves: the last it arrived at, and before any the first it will.
 *
 * @param now - the moment
 * @returns null when the truck has no event at all
 */
export function currentEvent(reader: Reader, truckId: Id<"truck">, now: Instant): CurrentEvent | null {
  const rows = reader
    .select({ event, arrivesAt: truckEvent.arrivesAt, rollOutAt: truckEvent.rollOutAt })
    .from(truckEvent)
    .innerJoin(event, eq(event.id, truckEvent.eventId))
    .where(eq(truckEvent.truckId, truckId))
    .orderBy(asc(truckEvent.arrivesAt))
    .all();
  return rows.findLast((row) => row.arrivesAt <= now) ?? rows[0] ?? null;
}

/** @returns the event, or null when there is none of that id */
export function eventById(reader: Reader, id: Id<"event">): EventRow | null {
  return reader.select().from(event).where(eq(event.id, id)).get() ?? null;
}

/** Lists the opening hours of a truck that end after a moment. */
export function openingsFrom(reader: Reader, truckId: Id<"truck">, from: Instant) {
  return reader
    .select({ from: opening.opensAt, to: opening.closesAt })
    .from(opening)
    .where(and(eq(opening.truckId, truckId), gte(opening.closesAt, from)))
    .orderBy(asc(opening.opensAt))
    .all();
}

/** Lists who works at a truck's bench, with their skills as JSON and when they are away. */
export function techniciansOf(reader: Reader, truckId: Id<"truck">) {
  return reader.select().from(truckTechnician).where(eq(truckTechnician.truckId, truckId)).orderBy(asc(truckTechnician.personId)).all();
}

/** Lists the trucks at whose bench somebody is on the list. */
export function benchesOf(reader: Reader, personId: Id<"person">): readonly Id<"truck">[] {
  return reader
    .select({ truckId: truckTechnician.truckId })
    .from(truckTechnician)
    .where(eq(truckTechnician.personId, personId))
    .orderBy(asc(truckTechnician.truckId))
    .all()
    .map(({ truckId }) => truckId);
}

/** Changes what is known of somebody at a truck's bench, adding them where they are new to it. */
export function setTechnician(
  tx: Tx,
  truckId: Id<"truck">,
  personId: Id<"person">,
  change: Partial<Pick<typeof truckTechnician.$inferInsert, "skills" | "awayFrom" | "awayUntil">>,
): void {
  tx.insert(truckTechnician)
    .values({ truckId, personId, ...change })
    .onConflictDoUpdate({ target: [truckTechnician.truckId, truckTechnician.personId], set: change })
    .run();
}

/** Finds people by a word of their name or by what a platform calls them. */
export function peopleNamed(reader: Reader, written: string): readonly { readonly id: Id<"person">; readonly name: string }[] {
  const wanted = written.trim().toLowerCase().replace(/^@/, "");
  const rows = reader
    .select({ id: person.id, name: person.name, handle: personIdentity.platformUserId })
    .from(person)
    .leftJoin(personIdentity, eq(personIdentity.personId, person.id))
    .all();
  const found = rows.filter(
    ({ name, handle }) => handle === wanted || (name ?? "").toLowerCase() === wanted || (name ?? "").toLowerCase().split(" ").includes(wanted),
  );
  return [...new Map(found.map(({ id, name }) => [id, { id, name: name ?? "erased" }])).values()];
}

/** Lists all players with the other names people may write for them, a restricted one's code word too; those erased left out. */
export function allPlayers(reader: Reader): readonly (PlayerRow & { readonly aliases: readonly string[] })[] {
  const aliases = reader.select().from(playerAlias).all();
  return reader
    .select()
    .from(player)
    .all()
    .filter((row) => row.erasedAt === null)
    .map((row) => {
      const written = aliases.filter(({ playerId }) => playerId === row.id).map(({ alias }) => alias);
      return { ...row, aliases: row.restrictedCode === null ? written : [...written, row.restrictedCode] };
    });
}

/** @returns the player, or null when there is none of that id */
export function playerById(reader: Reader, id: Id<"player">): PlayerRow | null {
  return reader.select().from(player).where(eq(player.id, id)).get() ?? null;
}

/** Lists the players in an event's field, by name, those withdrawn left out. */
export function fieldOf(reader: Reader, eventId: Id<"event">): readonly PlayerRow[] {
  return reader
    .select({ player, withdrawnAt: eventPlayer.withdrawnAt })
    .from(eventPlayer)
    .innerJoin(player, eq(player.id, eventPlayer.playerId))
    .where(eq(eventPlayer.eventId, eventId))
    .orderBy(asc(player.name))
    .all()
    .filter((row) => row.withdrawnAt === null)
    .map((row) => row.player);
}

/** @returns the player's next tee or range time at an event after a moment, or null */
export function nextTeeTime(reader: Reader, eventId: Id<"event">, playerId: Id<"player">, after: Instant): Instant | null {
  return (
    reader
      .select({ at: teeTime.at })
      .from(teeTime)
      .where(and(eq(teeTime.eventId, eventId), eq(teeTime.playerId, playerId), gte(teeTime.at, after)))
      .orderBy(asc(teeTime.at))
      .get()?.at ?? null
  );
}

/** Adds a person with the name a platform knows them by. */
export function addPerson(
  tx: Tx,
  row: typeof person.$inferInsert,
  identity: { readonly platform: string; readonly userId: string; readonly roles: readonly string[] },
): Id<"person"> {
  const { id } = tx.insert(person).values(row).returning({ id: person.id }).get();
  tx.insert(personIdentity)
    .values({ platform: identity.platform, platformUserId: identity.userId, personId: id, rehearsalRoles: JSON.stringify(identity.roles) })
    .run();
  return id;
}

/** Adds a truck. */
export function addTruck(tx: Tx, name: string): Id<"truck"> {
  return tx.insert(truck).values({ name }).returning({ id: truck.id }).get().id;
}

/** Adds a watched channel. */
export function addChannel(tx: Tx, row: typeof channel.$inferInsert): void {
  tx.insert(channel).values(row).run();
}

/** Adds a player with the names people write. */
export function addPlayer(tx: Tx, row: typeof player.$inferInsert, aliases: readonly string[]): Id<"player"> {
  const { id } = tx.insert(player).values(row).returning({ id: player.id }).get();
  for (const alias of new Set(aliases)) {
    tx.insert(playerAlias).values({ alias, playerId: id }).run();
  }
  return id;
}

/** Adds an event. */
export function addEvent(tx: Tx, row: typeof event.$inferInsert): Id<"event"> {
  return tx.insert(event).values(row).returning({ id: event.id }).get().id;
}

/** Adds what belongs to an event: a truck's stay, an opening, a player in the field, a tee time. */
export const addToEvent = {
  truck: (tx: Tx, row: typeof truckEvent.$inferInsert): void => void tx.insert(truckEvent).values(row).run(),
  opening: (tx: Tx, row: typeof opening.$inferInsert): void => void tx.insert(opening).values(row).run(),
  player: (tx: Tx, row: typeof eventPlayer.$inferInsert): void => void tx.insert(eventPlayer).values(row).run(),
  teeTime: (tx: Tx, row: typeof teeTime.$inferInsert): void => void tx.insert(teeTime).values(row).run(),
};
