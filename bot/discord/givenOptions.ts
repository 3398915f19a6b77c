import type { AutocompleteInteraction, ChatInputCommandInteraction } from "discord.js";
import type { Values } from "../chat/types.ts";
import { textOf } from "./attachedText.ts";

type Optioned = ChatInputCommandInteraction | AutocompleteInteraction;

/** The command by its whole name. */
export function commandOf(interaction: Optioned): string {
  const second = interaction.options.getSubcommand(false);
  return second === null ? interaction.commandName : `${interaction.commandName} ${second}`;
}

/** The options given so far. */
export function givenTo(interaction: Optioned) {
  const second = interaction.options.getSubcommand(false);
  return second === null ? interaction.options.data : (interaction.options.data[0]?.options ?? []);
}

/** The options as written; of an attached file its text, empty when it could not be read. */
export async function valuesOf(interaction: ChatInputCommandInteraction): Promise<Values> {
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
