import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
} from "discord.js";
import type { Command, Option } from "../chat/defineCommand.ts";
import { cutText } from "./escapeText.ts";

const SUMMARY_MAX = 100;
const OPTIONS_MAX = 25;
const OPTION_TEXT_MAX = 4000;

type Shown = Pick<Command, "name" | "summary" | "options">;

/** The commands as the platform registers them: two words are a command and its subcommand. */
export function commandRegistration(commands: readonly Shown[]): readonly RESTPostAPIChatInputApplicationCommandsJSONBody[] {
  const firstWords = [...new Set(commands.map(({ name }) => name.split(" ")[0] ?? name))];
  return firstWords.map((first) => {
    const alone = commands.find(({ name }) => name === first);
    return alone === undefined
      ? { name: first, description: first, options: commands.filter(({ name }) => name.startsWith(`${first} `)).map(subcommand) }
      : { name: first, description: cutText(alone.summary, SUMMARY_MAX), options: optionsOf(alone.options) };
  });
}

function subcommand({ name, summary, options }: Shown): APIApplicationCommandSubcommandOption {
  return {
    type: ApplicationCommandOptionType.Subcommand,
    name: name.split(" ")[1] ?? name,
    description: cutText(summary, SUMMARY_MAX),
    options: optionsOf(options),
  };
}

/** The platform wants required options first. */
function optionsOf(options: readonly Option[]): APIApplicationCommandBasicOption[] {
  return [...options.filter(({ required }) => required), ...options.filter(({ required }) => !required)]
    .slice(0, OPTIONS_MAX)
    .map(({ name, summary, required }) => ({
      type: ApplicationCommandOptionType.String,
      name: name.toLowerCase(),
      description: cutText(summary, SUMMARY_MAX),
      required,
      max_length: OPTION_TEXT_MAX,
    }));
}
