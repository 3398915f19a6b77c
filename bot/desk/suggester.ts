import { channelByName } from "../../db/repositories/people.ts";
import type { Desk } from "../chat/types.ts";
import { actorOf } from "./actorOf.ts";
import type { DeskParts } from "./deskParts.ts";
import { type NameMemory, nameMemory } from "./nameMemory.ts";
import { suggest } from "./suggest.ts";

/** Suggests out of a memory that is filled when somebody types first. */
export function suggester({ db, commands, now, rolesOf }: DeskParts): Desk["suggest"] {
  let filled: NameMemory | null = null;
  return ({ command: name, channel: channelName, sender, ...typing }) => {
    const channel = channelByName(db, channelName);
    const command = commands.find((known) => known.name === name);
    const actor = channel === null ? null : actorOf(db, sender, channel, now(), rolesOf);
    if (actor === null || command === undefined) {
      return [];
    }
    filled ??= nameMemory(db);
    filled.refresh();
    return suggest({ command, ...typing }, actor, filled);
  };
}
