import {
  type AutocompleteInteraction,
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  DiscordAPIError,
  type GuildMember,
  type Interaction,
  type Message,
  type MessageContextMenuCommandInteraction,
  type ModalSubmitInteraction,
  type StringSelectMenuInteraction,
} from "discord.js";
import type { Incoming, Typing, Values } from "../chat/types.ts";
import { isTable, textOf } from "./attachedText.ts";
import type { Channels } from "./channels.ts";
import { decodeCustomId } from "./customId.ts";
import type { Members } from "./members.ts";

export type Answerable =
  | ButtonInteraction
  | StringSelectMenuInteraction
  | ChatInputCommandInteraction
  | MessageContextMenuCommandInteraction
  | ModalSubmitInteraction;

interface Surroundings {
  readonly guildId: string;
  readonly channels: Pick<Channels, "nameOf">;
  readonly members: Pick<Members, "senderOf">;
}

/** What is known of an arrival at once, and the rest, which may have to be fetched after the acknowledgement. */
export interface Arriving {
  /** The command it stands for. */
  readonly command: string;
  readonly incoming: () => Promise<Incoming>;
}

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

/** What a person pressed, chose, sent or called; null when it is not for the desk. */
export function interactionArrival(interaction: Answerable, { guildId, channels, members }: Surroundings): Arriving | null {
  const channel = interaction.channelId === null ? null : channels.nameOf(interaction.channelId);
  if (interaction.guildId !== guildId || channel === null) {
    return null;
  }
  const sender = members.senderOf(interaction.user.id, roleIdsOf(interaction));
  if (interaction.isMessageContextMenuCommand()) {
    const { content } = interaction.targetMessage;
    return invoking({ key: `invoke:${interaction.id}`, channel, sender }, "order new", async () => ({ text: content }));
  }
  if (interaction.isChatInputCommand()) {
    return invoking({ key: `invoke:${interaction.id}`, channel, sender }, commandOf(interaction), () => valuesOf(interaction));
  }
  const action = decodeCustomId(interaction.customId);
  if (action === null) {
    return null;
  }
  const { command } = action;
  if (interaction.isModalSubmit()) {
    return {
      command,
      incoming: async () => ({ kind: "submit", key: `submit:${interaction.id}`, channel, sender, action, answers: answersOf(interaction) }),
    };
  }
  const picked = interaction.isStringSelectMenu() ? interaction.values : [];
  return { command, incoming: async () => ({ kind: "press", key: `press:${interaction.id}`, channel, sender, action, picked }) };
}

/** What somebody is typing into an option; null when it is not for the desk. */
export function typingOf(interaction: AutocompleteInteraction, { guildId, channels, members }: Surroundings): Typing | null {
  const channel = channels.nameOf(interaction.channelId);
  if (interaction.guildId !== guildId || channel === null) {
    return null;
  }
  const { name: option, value: typed } = interaction.options.getFocused(true);
  const sender = members.senderOf(interaction.user.id, roleIdsOf(interaction));
  const values = Object.fromEntries(
    givenTo(interaction).flatMap(({ name, value }) => (name === option || value === undefined ? [] : [[name, String(value)]])),
  );
  return { channel, sender, command: commandOf(interaction), option, typed, values };
}

export const isAnswerable = (interaction: Interaction): interaction is Answerable =>
  interaction.isButton() ||
  interaction.isStringSelectMenu() ||
  interaction.isChatInputCommand() ||
  interaction.isMessageContextMenuCommand() ||
  interaction.isModalSubmit();

function invoking(from: Pick<Incoming, "key" | "channel" | "sender">, command: string, values: () => Promise<Values>): Arriving {
  return { command, incoming: async () => ({ kind: "invoke", ...from, command, values: await values() }) };
}

/** The roles the platform states with this very arrival. */
function roleIdsOf({ member }: Answerable | AutocompleteInteraction): readonly string[] {
  if (member === null) {
    return [];
  }
  return Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()];
}

type Optioned = ChatInputCommandInteraction | AutocompleteInteraction;

function commandOf(interaction: Optioned): string {
  const second = interaction.options.getSubcommand(false);
  return second === null ? interaction.commandName : `${interaction.commandName} ${second}`;
}

function givenTo(interaction: Optioned) {
  const second = interaction.options.getSubcommand(false);
  return second === null ? interaction.options.data : (interaction.options.data[0]?.options ?? []);
}

/** The options as written; of an attached file its text, empty when it could not be read. */
async function valuesOf(interaction: ChatInputCommandInteraction): Promise<Values> {
  const values: [string, string][] = [];
  for (const { name, value, attachment } of givenTo(interaction)) {
    if (attachment) {
      values.push([name, (await textOf(attachment)) ?? ""]);
    } else if (value !== undefined) {
      values.push([name, String(value)]);
    }
  }
  return Object.fromEntries(values);
}

function answersOf(interaction: ModalSubmitInteraction): Values {
  const answers = interaction.fields.fields.map((field): readonly [string, string] => {
    const value = "value" in field ? field.value : "values" in field ? field.values[0] : "";
    return [field.customId, typeof value === "string" ? value : ""];
  });
  return Object.fromEntries(answers);
}
