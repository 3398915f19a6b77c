import type { Client } from "discord.js";
import type { DiscordSettings } from "../config/environment.ts";
import { lacking } from "./neededPermissions.ts";

/** One line for each channel of the settings in which the bot cannot do its work; empty when it can everywhere. */
export function missingPermissions(client: Client<true>, { guildId, channels }: Pick<DiscordSettings, "guildId" | "channels">): readonly string[] {
  const guild = client.guilds.cache.get(guildId);
  const self = guild?.members.me ?? null;
  if (guild === undefined || self === null || !guild.available) {
    return [];
  }
  return [...channels].flatMap(([name, id]) => {
    const channel = guild.channels.cache.get(id);
    if (channel === undefined) {
      return [`#${name}: no channel of this guild has the id ${id}, or the bot cannot see it (View Channel)`];
    }
    if (!channel.isTextBased()) {
      return [`#${name}: the id ${id} is no text channel`];
    }
    const missing = lacking(channel.permissionsFor(self).bitfield);
    return missing.length === 0 ? [] : [`#${name}: the bot lacks ${missing.join(", ")}`];
  });
}
