import type {
  ButtonInteraction,
  ChatInputCommandInteraction,
  Interaction,
  Message,
  ModalSubmitInteraction,
  StringSelectMenuInteraction,
} from "discord.js";
import type { Incoming, Values } from "../chat/types.ts";
import type { Channels } from "./channels.ts";
import { decodeCustomId } from "./customId.ts";
import type { Members } from "./members.ts";

export type Answerable = ButtonInteraction | StringSelectMenuInteraction | ChatInputCommandInteraction | ModalSubmitInteraction;

interface Surroundings {
  readonly guildId: string;
  readonly channels: Pick<Channels, "nameOf">;
  readonly members: Pick<Members, "senderOf">;
}

/** A person's message in a watched channel; null for any other. */
export function messageArrival(message: Message, { guildId, channels, members }: Surroundings): Incoming | null {
  const channel = channels.nameOf(message.channelId);
  if (message.guildId !== guildId || channel === null || message.author.bot || message.webhookId !== null || message.system) {
    return null;
  }
  const key = `message:${message.id}:${message.editedTimestamp ?? 0}`;
  const roleIds = [...(message.member?.roles.cache.keys() ?? [])];
  return { kind: "message", key, channel, sender: members.senderOf(message.author.id, roleIds), message: message.id, text: message.content };
}

/** What a person pressed, chose, sent or called; null when it is not for the desk. */
export function interactionArrival(interaction: Answerable, { guildId, channels, members }: Surroundings): Incoming | null {
  const channel = interaction.channelId === null ? null : channels.nameOf(interaction.channelId);
  if (interaction.guildId !== guildId || channel === null) {
    return null;
  }
  const sender = members.senderOf(interaction.user.id, roleIdsOf(interaction));
  if (interaction.isChatInputCommand()) {
    return { kind: "invoke", key: `invoke:${interaction.id}`, channel, sender, ...invoked(interaction) };
  }
  const action = decodeCustomId(interaction.customId);
  if (action === null) {
    return null;
  }
  if (interaction.isModalSubmit()) {
    return { kind: "submit", key: `submit:${interaction.id}`, channel, sender, action, answers: answersOf(interaction) };
  }
  const picked = interaction.isStringSelectMenu() ? interaction.values : [];
  return { kind: "press", key: `press:${interaction.id}`, channel, sender, action, picked };
}

export const isAnswerable = (interaction: Interaction): interaction is Answerable =>
  interaction.isButton() || interaction.isStringSelectMenu() || interaction.isChatInputCommand() || interaction.isModalSubmit();

/** The roles the platform states with this very arrival. */
function roleIdsOf({ member }: Answerable): readonly string[] {
  if (member === null) {
    return [];
  }
  return Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()];
}

function invoked(interaction: ChatInputCommandInteraction): { readonly command: string; readonly values: Values } {
  const second = interaction.options.getSubcommand(false);
  const given = second === null ? interaction.options.data : (interaction.options.data[0]?.options ?? []);
  return {
    command: second === null ? interaction.commandName : `${interaction.commandName} ${second}`,
    values: Object.fromEntries(given.flatMap(({ name, value }) => (value === undefined ? [] : [[name, String(value)] as const]))),
  };
}

function answersOf(interaction: ModalSubmitInteraction): Values {
  const answers = interaction.fields.fields.map((field): readonly [string, string] => {
    const value = "value" in field ? field.value : "values" in field ? field.values[0] : "";
    return [field.customId, typeof value === "string" ? value : ""];
  });
  return Object.fromEntries(answers);
}
