import { DiscordAPIError, type GuildMember, type Message } from "discord.js";
import type { Incoming } from "../chat/types.ts";
import { isTable, textOf } from "./attachedText.ts";
import type { Surroundings } from "./surroundings.ts";

/**
 * A person's message in a watched channel; null for any other.
 *
 * @param isLive - it came by the gateway just now, so that it says which roles its author has; one out of history does not
 */
export async function messageArrival(message: Message, isLive: boolean, { guildId, channels, members }: Surroundings): Promise<Incoming | null> {
  const channel = channels.nameOf(message.channelId);
  if (message.guildId !== guildId || channel === null || message.author.bot || message.webhookId !== null || message.system) {
    return null;
  }
  const key = `message:${message.id}:${message.editedTimestamp ?? 0}`;
  const member = isLive && message.member !== null ? message.member : await memberOf(message);
  const roleIds = [...(member?.roles.cache.keys() ?? [])];
  const attached = message.attachments.find(isTable);
  const table = attached === undefined ? {} : { table: (await textOf(attached)) ?? "" };
  const sender = members.senderOf(message.author.id, roleIds);
  return { kind: "message", key, channel, sender, message: message.id, text: message.content, ...table };
}

/** The author as a member now; somebody who has left has no roles. */
async function memberOf({ guild, author }: Message): Promise<GuildMember | null> {
  try {
    return (await guild?.members.fetch({ user: author.id, force: true })) ?? null;
  } catch (error) {
    if (error instanceof DiscordAPIError && error.status === 404) {
      return null;
    }
    throw error;
  }
}
