import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandSubcommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  type RESTPostAPIApplicationCommandsJSONBody,
} from "discord.js";
import type { Command, Option } from "../chat/defineCommand.ts";
import { refuseOverLimits } from "./refuseOverLimits.ts";

const CHOICES_MAX = 25;
const SUMMARY_MAX = 100;
const OPTION_TEXT_MAX = 4000;

type Shown = Pick<Command, "name" | "summary" | "options">;

/** Offered on a message that is there already. */
const readAsOrder: RESTPostAPIApplicationCommandsJSONBody = { type: ApplicationCommandType.Message, name: "Read as an order" };

/**
 * The commands as the platform registers them: two words are a command and its subcommand.
 *
 * @throws {Error} naming the command that the platform would refuse, and with it all of them
 */
export function commandRegistration(commands: readonly Shown[]): readonly RESTPostAPIApplicationCommandsJSONBody[] {
  const firstWords = [...new Set(commands.map(({ name }) => name.split(" ")[0] ?? name))];
  const typed = firstWords.map((first) => {
    const alone = commands.find(({ name }) => name === first);
    const group = commands.filter(({ name }) => name.startsWith(`${first} `));
    return alone === undefined
      ? { name: first, description: groupSummary(first, group), options: group.map(subcommand) }
      : { name: first, description: alone.summary, options: optionsOf(alone.options) };
  });
  refuseOverLimits(typed);
  return [...typed, readAsOrder];
}

const secondWord = ({ name }: Shown): string => name.split(" ")[1] ?? name;

/** `shift: on, off, skills`; what has no room is counted. */
function groupSummary(first: string, group: readonly Shown[]): string {
  const words = group.map(secondWord);
  const written = (count: number): string =>
    `${first}: ${words.slice(0, count).join(", ")}${count < words.length ? ` and ${words.length - count} more` : ""}`;
  const counts = words.map((_, index) => words.length - index);
  return written(counts.find((count) => written(count).length <= SUMMARY_MAX) ?? 1);
}

const subcommand = (shown: Shown): APIApplicationCommandSubcommandOption => ({
  type: ApplicationCommandOptionType.Subcommand,
  name: secondWord(shown),
  description: shown.summary,
  options: optionsOf(shown.options),
});

/** The platform wants required options first. */
const optionsOf = (options: readonly Option[]): APIApplicationCommandBasicOption[] =>
  [...options.filter(({ required }) => required), ...options.filter(({ required }) => !required)].map(optionOf);

/** A few fixed values are shown as choices; more of them, and names of the record, come as one types. */
function optionOf({ name, summary, required, takes, oneOf }: Option): APIApplicationCommandBasicOption {
  const asked = { name, description: summary, required };
  if (takes === "file") {
    return { ...asked, type: ApplicationCommandOptionType.Attachment };
  }
  if (oneOf !== undefined && oneOf.length <= CHOICES_MAX) {
    return { ...asked, type: ApplicationCommandOptionType.String, choices: oneOf.map((value) => ({ name: value, value })) };
  }
  const text = { ...asked, type: ApplicationCommandOptionType.String, max_length: OPTION_TEXT_MAX } as const;
  return takes === undefined && oneOf === undefined ? text : { ...text, autocomplete: true };
}
