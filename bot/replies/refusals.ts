import type { DomainError, Facts } from "../../core/errors.ts";
import type { Command } from "../chat/defineCommand.ts";
import type { Actor, Reply, Role } from "../chat/types.ts";
import { note } from "./card.ts";
import { domainErrorWords } from "./domainErrorWords.ts";

const list = (words: readonly string[]): string => (words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`);

/** Somebody the team does not know. */
export const strangerCard = (): Reply => note("refusal", "I do not know you yet", "refusal", "Ask the lead to add you to the team.");

export const unknownCommandCard = (name: string): Reply => note("refusal", `There is no /${name}`, "refusal", "/help lists what there is.");

/** A refused role: who may, and as whom the asker was seen. */
export const refusalCard = (actor: Actor, command: string, allowed: readonly Role[]): Reply =>
  note(
    "refusal",
    `${command} is for ${list(allowed)}`,
    "refusal",
    `You are here as ${actor.roles.length === 0 ? "a member without a role" : list(actor.roles)}. Nothing was changed.`,
  );

/** Values a command could not read, by option, with what each takes. */
export function faultyValuesCard(command: Command, at: readonly string[]): Reply {
  const lines = at.map((name) => `${name}: ${command.options.find((option) => option.name === name)?.summary ?? "not as expected"}`);
  return note("refusal", `/${command.name} needs other values`, "refusal", ...lines);
}

export function domainErrorCard(error: DomainError): Reply {
  const say = domainErrorWords[error.code] as (facts: Facts[keyof Facts]) => string;
  return note("refusal", say(error.facts), "refusal", "Nothing was changed.");
}

/** Anything else is a bug: the person gets a number to give to whoever mends it. */
export const bugCard = (reference: string): Reply =>
  note("bug", "That went wrong on my side", "refusal", `Nothing was changed. Tell the lead: reference ${reference}.`);
