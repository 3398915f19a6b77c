import type { BaseInteraction } from "discord.js";

/** The roles the platform states with this very arrival. */
export function statedRoles({ member }: Pick<BaseInteraction, "member">): readonly string[] {
  if (member === null) {
    return [];
  }
  return Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()];
}
