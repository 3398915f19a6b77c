/** A command, a subcommand or an option, as far as limits go. */
interface Part {
  readonly name: string;
  readonly description: string;
  readonly options?: readonly Part[];
  readonly choices?: readonly { readonly name: string; readonly value: string | number }[] | undefined;
}

const COMMANDS_MAX = 100;
const OPTIONS_MAX = 25;
const CHOICES_MAX = 25;
const DESCRIPTION_MAX = 100;
const CHOICE_MAX = 100;
const CHARACTERS_MAX = 8000;
const platformName = /^[a-z0-9_-]{1,32}$/;

/** @throws {Error} naming the first command that the platform would refuse, by its published limits */
export function refuseOverLimits(commands: readonly Part[]): void {
  const [fault] = [...(commands.length > COMMANDS_MAX ? [`${commands.length} commands, ${COMMANDS_MAX} fit`] : []), ...commands.flatMap(faultsOf)];
  if (fault !== undefined) {
    throw new Error(`the chat would refuse the commands: ${fault}`);
  }
}

function faultsOf(command: Part): readonly string[] {
  const characters = charactersOf(command);
  return [
    ...faultsWithin(command, `/${command.name}`),
    ...(characters > CHARACTERS_MAX ? [`/${command.name} has ${characters} characters in all, ${CHARACTERS_MAX} fit`] : []),
  ];
}

function faultsWithin({ name, description, options = [], choices = [] }: Part, path: string): readonly string[] {
  const misfit = choices.find((choice) => [choice.name, String(choice.value)].some((text) => text.length < 1 || text.length > CHOICE_MAX));
  return [
    ...(platformName.test(name) ? [] : [`${path} is no name of 1 to 32 small letters, digits, _ and -`]),
    ...(description.length >= 1 && description.length <= DESCRIPTION_MAX
      ? []
      : [`${path} has ${description.length} characters of summary, 1 to ${DESCRIPTION_MAX} fit`]),
    ...(options.length > OPTIONS_MAX ? [`${path} has ${options.length} options, ${OPTIONS_MAX} fit`] : []),
    ...(new Set(options.map((option) => option.name)).size < options.length ? [`${path} has two options of one name`] : []),
    ...(choices.length > CHOICES_MAX ? [`${path} has ${choices.length} choices, ${CHOICES_MAX} fit`] : []),
    ...(misfit === undefined ? [] : [`${path} has a choice "${misfit.name}" that is not 1 to ${CHOICE_MAX} characters long`]),
    ...options.flatMap((option) => faultsWithin(option, `${path} ${option.name}`)),
  ];
}

/** Names, descriptions and values together. */
const charactersOf = ({ name, description, options = [], choices = [] }: Part): number =>
  name.length +
  description.length +
  choices.reduce((sum, choice) => sum + choice.name.length + String(choice.value).length, 0) +
  options.reduce((sum, option) => sum + charactersOf(option), 0);
