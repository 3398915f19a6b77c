import type { AutocompleteInteraction } from "discord.js";
import type { Typing } from "../chat/types.ts";
import { commandOf, givenTo } from "./givenOptions.ts";
import { statedRoles } from "./statedRoles.ts";
import type { Surroundings } from "./surroundings.ts";

/** What somebody is typing into an option; null when it is not for the desk. */
export function typingOf(interaction: AutocompleteInteraction, { guildId, channels, members }: Surroundings): Typing | null {
  const channel = channels.nameOf(interaction.channelId);
  if (interaction.guildId !== guildId || channel === null) {
    return null;
  }
  const { name: option, value: typed } = interaction.options.getFocused(true);
  const sender = members.senderOf(interaction.user.id, statedRoles(interaction));
  const values = Object.fromEntries(
    givenTo(interaction).flatMap(({ name, value }) => (name === option || value === undefined ? [] : [[name, String(value)]])),
  );
  return { channel, sender, command: commandOf(interaction), option, typed, values };
}
