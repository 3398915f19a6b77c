import { type ApplicationCommandDataResolvable, ApplicationCommandType } from "discord.js";
import type { Command } from "../chat/defineCommand.ts";
import { commandRegistration } from "./commandRegistration.ts";

/** The part of an application's command manager that registering takes. */
interface RegisteredCommands {
  readonly fetch: (options: { readonly guildId: string }) => Promise<{ readonly values: () => Iterable<Registered> }>;
  readonly set: (commands: ApplicationCommandDataResolvable[], guildId: string) => Promise<unknown>;
}

/** A command or option, sent or registered: the client renames some fields of what it has fetched. */
interface Registered {
  readonly name: string;
  readonly type?: number | null | undefined;
  readonly description?: string | undefined;
  readonly required?: boolean | undefined;
  readonly autocomplete?: boolean | undefined;
  readonly max_length?: number | undefined;
  readonly maxLength?: number | undefined;
  readonly choices?: readonly { readonly name: string; readonly value: string | number }[] | undefined;
  readonly options?: readonly Registered[] | null | undefined;
}

/** Registers the bot's commands in its guild, unless they stand there already. */
export async function registerCommands(
  registered: RegisteredCommands,
  guildId: string,
  commands: readonly Pick<Command, "name" | "summary" | "options">[],
): Promise<"same" | "set"> {
  const wanted = commandRegistration(commands);
  const standing = await registered.fetch({ guildId });
  if (compared([...standing.values()]) === compared(wanted as readonly Registered[])) {
    return "same";
  }
  await registered.set([...wanted], guildId);
  return "set";
}

const compared = (commands: readonly Registered[]): string => JSON.stringify(byName(commands).map(normal));

const byName = <T extends { readonly name: string }>(named: readonly T[]): readonly T[] =>
  [...named].sort((one, other) => (one.name < other.name ? -1 : one.name > other.name ? 1 : 0));

/** Every field the bot sends, with the platform's own default where it is left out; options and choices in one order. */
function normal(part: Registered): object {
  return {
    name: part.name,
    type: part.type ?? ApplicationCommandType.ChatInput,
    description: part.description ?? "",
    required: part.required ?? false,
    autocomplete: part.autocomplete ?? false,
    maxLength: part.maxLength ?? part.max_length ?? null,
    choices: byName(part.choices ?? []).map(({ name, value }) => [name, value]),
    options: byName(part.options ?? []).map(normal),
  };
}
