import type { Instant } from "../../core/kinds.ts";
import { type ChannelRow, currentEvent, personByIdentity } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { type Actor, type Incoming, type Role, roles } from "../chat/types.ts";

/** Turns what the platform says of a member into roles; anything unknown is no role. */
export type RolesOf = (platform: string, roleIds: readonly string[]) => readonly Role[];

/** The rehearsal is its own platform: its role ids are the roles' names. */
export const rolesByName: RolesOf = (_platform, roleIds) => roles.filter((role) => roleIds.includes(role));

/**
 * Who is behind an arrival, in which truck's channel, by the roles the platform states now.
 *
 * @returns null when nobody here has that name
 */
export function actorOf(reader: Reader, sender: Incoming["sender"], channel: ChannelRow, now: Instant, rolesOf: RolesOf): Actor | null {
  const person = personByIdentity(reader, sender.platform, sender.platformId);
  if (person === null) {
    return null;
  }
  const zone = channel.truckId === null ? null : (currentEvent(reader, channel.truckId, now)?.event.zone ?? null);
  return {
    person: person.id,
    name: person.name ?? "erased",
    roles: rolesOf(sender.platform, sender.roleIds),
    truck: channel.truckId,
    zone: zone ?? person.zone,
    ownZone: person.zone,
    lengthUnit: person.lengthUnit,
  };
}
