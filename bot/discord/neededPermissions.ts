import { PermissionFlagsBits } from "discord.js";

const needed = {
  "View Channel": PermissionFlagsBits.ViewChannel,
  "Send Messages": PermissionFlagsBits.SendMessages,
  "Embed Links": PermissionFlagsBits.EmbedLinks,
  "Attach Files": PermissionFlagsBits.AttachFiles,
  "Read Message History": PermissionFlagsBits.ReadMessageHistory,
} as const;

/** What the bot cannot do without in each of its channels and may not, by the names the chat's own settings give it. */
export const lacking = (allowed: bigint): readonly string[] =>
  Object.entries(needed).flatMap(([name, bit]) => ((allowed & bit) === 0n ? [name] : []));
