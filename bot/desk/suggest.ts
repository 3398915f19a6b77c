import type { Command } from "../chat/defineCommand.ts";
import type { Actor, Values } from "../chat/types.ts";
import type { NameMemory } from "./nameMemory.ts";
import { nameSuggestions, type Suggested } from "./nameSuggestions.ts";
import { rankTyped } from "./rankTyped.ts";

const MOST = 25;
const LONGEST = 100;

/** An option of a command that somebody is typing a value for, with the values given before. */
interface Asked {
  readonly command: Pick<Command, "options" | "roles">;
  readonly option: string;
  readonly typed: string;
  readonly values: Values;
}

interface Suggestion {
  readonly label: string;
  readonly value: string;
}

/**
 * What the value begun may become, most likely first: at most 25, answered from memory at once. Nobody learns from it
 * what the command would not tell: without its role there is none, and a restricted name is its code word.
 */
export function suggest({ command, option: name, typed, values }: Asked, actor: Actor, memory: NameMemory): readonly Suggestion[] {
  const option = command.options.find((known) => known.name === name);
  const may = command.roles.length === 0 || command.roles.some((role) => actor.roles.includes(role));
  if (option === undefined || !may) {
    return [];
  }
  const known = option.oneOf?.map(asItIs) ?? nameSuggestions(option, { typed, values, actor, names: memory.names() });
  const ranked = rankTyped(typed, known).filter(({ value }) => value.length <= LONGEST);
  return [...new Map(ranked.map(({ label, value }) => [value, { label: label.slice(0, LONGEST), value }])).values()].slice(0, MOST);
}

const asItIs = (value: string): Suggested => ({ label: value, value, text: value });
