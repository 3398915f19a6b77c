import type {
  ButtonInteraction,
  ChatInputCommandInteraction,
  Interaction,
  MessageContextMenuCommandInteraction,
  ModalSubmitInteraction,
  StringSelectMenuInteraction,
} from "discord.js";
import type { Incoming, Values } from "../chat/types.ts";
import type { Asking } from "../desk/answers.ts";
import { decodeCustomId } from "./customId.ts";
import { commandOf, valuesOf } from "./givenOptions.ts";
import { statedRoles } from "./statedRoles.ts";
import type { Surroundings } from "./surroundings.ts";

export type Answerable =
  | ButtonInteraction
  | StringSelectMenuInteraction
  | ChatInputCommandInteraction
  | MessageContextMenuCommandInteraction
  | ModalSubmitInteraction;

/** What is known of an arrival at once, and the rest, which may have to be fetched after the acknowledgement. */
export interface Arriving {
  readonly asking: Asking;
  readonly incoming: () => Promise<Incoming>;
}

/** What a person pressed, chose, sent or called; null when it is not for the desk. */
export function interactionArrival(interaction: Answerable, { guildId, channels, members }: Surroundings): Arriving | null {
  const channel = interaction.channelId === null ? null : channels.nameOf(interaction.channelId);
  if (interaction.guildId !== guildId || channel === null) {
    return null;
  }
  const from = { channel, sender: members.senderOf(interaction.user.id, statedRoles(interaction)) };
  if (interaction.isMessageContextMenuCommand()) {
    const { content } = interaction.targetMessage;
    return invoking({ ...from, key: `invoke:${interaction.id}`, command: "order new" }, async () => ({ text: content }));
  }
  if (interaction.isChatInputCommand()) {
    return invoking({ ...from, key: `invoke:${interaction.id}`, command: commandOf(interaction) }, () => valuesOf(interaction));
  }
  const action = decodeCustomId(interaction.customId);
  if (action === null) {
    return null;
  }
  const { command } = action;
  if (interaction.isModalSubmit()) {
    const key = `submit:${interaction.id}`;
    return { asking: { ...from, key, command }, incoming: async () => ({ ...from, kind: "submit", key, action, answers: answersOf(interaction) }) };
  }
  const key = `press:${interaction.id}`;
  const picked = interaction.isStringSelectMenu() ? interaction.values : [];
  return { asking: { ...from, key, command }, incoming: async () => ({ ...from, kind: "press", key, action, picked }) };
}

export const isAnswerable = (interaction: Interaction): interaction is Answerable =>
  interaction.isButton() ||
  interaction.isStringSelectMenu() ||
  interaction.isChatInputCommand() ||
  interaction.isMessageContextMenuCommand() ||
  interaction.isModalSubmit();

function invoking(asking: Asking, values: () => Promise<Values>): Arriving {
  return { asking, incoming: async () => ({ ...asking, kind: "invoke", values: await values() }) };
}

function answersOf(interaction: ModalSubmitInteraction): Values {
  const answers = interaction.fields.fields.map((field): readonly [string, string] => {
    const value = "value" in field ? field.value : "values" in field ? field.values[0] : "";
    return [field.customId, typeof value === "string" ? value : ""];
  });
  return Object.fromEntries(answers);
}
