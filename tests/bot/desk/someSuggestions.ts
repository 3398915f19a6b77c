import type { Actor, Role, Values } from "../../../bot/chat/types.ts";
import { nameMemory } from "../../../bot/desk/nameMemory.ts";
import { suggest } from "../../../bot/desk/suggest.ts";
import { commands } from "../../../bot/registry.ts";
import { allTrucks } from "../../../db/repositories/people.ts";
import type { Db } from "../../../db/write.ts";

interface Around {
  readonly values?: Values;
  readonly actor?: Actor;
}

/** Somebody with some roles in a channel of a truck. */
export function actorWith(db: Db, roles: readonly Role[], truck = "Plover"): Actor {
  const zone = "Europe/Lisbon";
  const id = allTrucks(db).find(({ name }) => name === truck)?.id ?? null;
  return { person: null, name: "", roles, truck: id, zone, ownZone: zone, lengthUnit: "in" };
}

/** What is suggested from the record as it is now, to a rep of Plover unless said otherwise. */
export function suggested(db: Db, command: string, option: string, typed: string, { values = {}, actor = actorWith(db, ["rep"]) }: Around = {}) {
  const known = commands.find(({ name }) => name === command);
  if (known === undefined) throw new Error(`no command ${command}`);
  return suggest({ command: known, option, typed, values }, actor, nameMemory(db));
}

export const valuesOf = (...asked: Parameters<typeof suggested>): readonly string[] => suggested(...asked).map(({ value }) => value);
