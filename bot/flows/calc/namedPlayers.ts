import { allPlayers } from "../../../db/repositories/people.ts";
import type { NamedPlayer } from "../../boundary/reading.ts";
import type { Context } from "../../chat/context.ts";

/** The players whose clubs a person may name: none of the restricted ones but to the lead. */
export function namedPlayers({ actor, read }: Context): readonly NamedPlayer[] {
  const seesAll = actor.roles.includes("lead");
  return read(allPlayers).flatMap(({ id, name, aliases, restrictedCode }) =>
    name === null || (restrictedCode !== null && !seesAll) ? [] : [{ id, name, aliases }],
  );
}
