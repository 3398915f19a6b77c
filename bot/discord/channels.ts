import type { Client, GuildTextBasedChannel, Message } from "discord.js";
import type { DiscordSettings } from "../config/environment.ts";

/** The watched channels, both ways between the week's names and the platform's ids. */
export interface Channels {
  readonly nameOf: (channelId: string) => string | null;
  readonly names: readonly string[];
  /** Null when the name has no id in the settings, or the id is no text channel of this guild. */
  readonly open: (name: string) => Promise<GuildTextBasedChannel | null>;
}

/** Opens only what the settings name, and only in the one guild. */
export function channelsOf(client: Client, { channels, guildId }: Pick<DiscordSettings, "channels" | "guildId">): Channels {
  const names = new Map([...channels].map(([name, id]) => [id, name]));
  return {
    nameOf: (channelId) => names.get(channelId) ?? null,
    names: [...channels.keys()],
    open: async (name) => {
      const id = channels.get(name);
      const channel = id === undefined ? null : await client.channels.fetch(id);
      return channel?.isTextBased() && !channel.isDMBased() && channel.guildId === guildId ? channel : null;
    },
  };
}

/** The next page of history after a message, the oldest first. */
export async function pageAfter(channel: GuildTextBasedChannel, after: string, limit: number): Promise<readonly Message[]> {
  const page = await channel.messages.fetch({ after, limit, cache: false });
  return [...page.values()].sort(byAge);
}

/** The last page of history up to a message, that one included if there is room, the oldest first. */
export async function pageBefore(channel: GuildTextBasedChannel, upTo: string, limit: number): Promise<readonly Message[]> {
  const page = await channel.messages.fetch({ before: (BigInt(upTo) + 1n).toString(), limit, cache: false });
  return [...page.values()].sort(byAge);
}

const byAge = (left: Message, right: Message): number => (BigInt(left.id) < BigInt(right.id) ? -1 : 1);
