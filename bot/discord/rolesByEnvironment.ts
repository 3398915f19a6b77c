import { roles } from "../chat/types.ts";
import type { DiscordSettings } from "../config/environment.ts";
import type { RolesOf } from "../desk/actorOf.ts";

/** Roles by the ids in the settings; a role without an id is nobody's. */
export function rolesByEnvironment({ roleIds }: Pick<DiscordSettings, "roleIds">): RolesOf {
  return (_platform, held) =>
    roles.filter((role) => {
      const id = roleIds[role];
      return id !== null && held.includes(id);
    });
}
