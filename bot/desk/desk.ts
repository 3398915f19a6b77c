import { DomainError } from "../../core/errors.ts";
import type { Instant } from "../../core/kinds.ts";
import { findReply } from "../../db/repositories/inbound.ts";
import { enqueuePost } from "../../db/repositories/outbox.ts";
import { channelByName } from "../../db/repositories/people.ts";
import { write } from "../../db/write.ts";
import { readMessage } from "../boundary/readMessage.ts";
import type { Context } from "../chat/context.ts";
import type { Command } from "../chat/defineCommand.ts";
import type { Actor, Desk, Incoming, Reply, Values } from "../chat/types.ts";
import { bugCard, domainErrorCard, faultyValuesCard, refusalCard, strangerCard, unknownCommandCard } from "../replies/refusals.ts";
import { actorOf } from "./actorOf.ts";
import { contextOf } from "./contextOf.ts";
import type { DeskParts } from "./deskParts.ts";
import { readingContext } from "./readingContext.ts";
import { routeMessage } from "./routeMessage.ts";
import { routeTable } from "./routeTable.ts";
import { suggester } from "./suggester.ts";

interface Routed {
  readonly command: string;
  readonly values: Values;
}

/** Values of a press: the subject under its own name, the version seen, what was picked. */
function pressValues(incoming: Extract<Incoming, { kind: "press" | "submit" }>): Values {
  const { subject, version, argument } = incoming.action;
  const [kind = "", id = ""] = subject.split(":");
  const picked = incoming.kind === "press" ? incoming.picked[0] : undefined;
  const said = picked ?? argument;
  return {
    ...(incoming.kind === "submit" ? incoming.answers : {}),
    ...(kind === "" ? {} : { [kind]: `id:${id}` }),
    version: String(version),
    ...(said === undefined ? {} : { argument: said }),
  };
}

/**
 * The desk: who asks, may they, have we seen it; then the command, and one commit.
 *
 * @param parts - the database, the registry, clock and randomness handed in
 */
export function makeDesk(parts: DeskParts): Desk {
  return { receive: (incoming) => receiveOrTell(parts, incoming), suggest: suggester(parts) };
}

async function receiveOrTell(parts: DeskParts, incoming: Incoming): Promise<Reply | null> {
  try {
    return await receive(parts, incoming);
  } catch (error) {
    const { ref } = parts.newMark();
    parts.log(error, ref);
    return tellOfBug(parts, incoming, bugCard(ref));
  }
}

async function receive(parts: DeskParts, incoming: Incoming): Promise<Reply | null> {
  const channel = channelByName(parts.db, incoming.channel);
  if (channel === null) {
    return null;
  }
  const known = findReply(parts.db, incoming.key);
  if (known !== null) {
    return known.reply as Reply | null;
  }
  const now = parts.now();
  const actor = actorOf(parts.db, incoming.sender, channel, now, parts.rolesOf);
  const routed = actor === null && incoming.kind === "message" ? null : route(parts, incoming, actor, now);
  if (routed === null) {
    return null;
  }
  const context = contextOf(parts, incoming, channel, actor, now);
  if (actor === null) {
    return refuse(context, "person unknown", strangerCard());
  }
  const command = parts.commands.find(({ name }) => name === routed.command);
  if (command === undefined) {
    return refuse(context, "unknown command", unknownCommandCard(routed.command));
  }
  if (command.roles.length > 0 && !command.roles.some((role) => actor.roles.includes(role))) {
    return refuse(context, `refused ${command.name}`, refusalCard(actor, command.name, command.roles));
  }
  return runCommand(command, routed.values, context);
}

function route(parts: DeskParts, incoming: Incoming, actor: Actor | null, now: Instant): Routed | null {
  switch (incoming.kind) {
    case "message":
      return (
        routeTable(incoming, channelByName(parts.db, incoming.channel)?.purpose ?? null) ??
        (actor === null ? null : routeMessage(readMessage(incoming.text, readingContext(parts.db, actor, now)), incoming.text))
      );
    case "invoke":
      return { command: incoming.command, values: incoming.values };
    default:
      return { command: incoming.action.command, values: pressValues(incoming) };
  }
}

async function runCommand(command: Command, values: Values, context: Context): Promise<Reply | null> {
  try {
    const done = await command.handle(values, context);
    return done?.kind === "faults" ? settle(context, faultyValuesCard(command, done.at)) : done === null ? null : settle(context, done);
  } catch (error) {
    if (error instanceof DomainError) {
      return settle(context, domainErrorCard(error));
    }
    throw error;
  }
}

/** The answer to a message leaves by the outbox, that to its failure too; nothing is kept of it, so that it may be sent again. */
function tellOfBug(parts: DeskParts, { kind, key, channel }: Incoming, reply: Reply): Reply | null {
  if (kind !== "message" || reply.kind !== "card") {
    return reply;
  }
  const { card } = reply;
  write(parts.db, (tx) => enqueuePost(tx, { channel, dedupeKey: `answer:${key}`, card, at: parts.now(), ...parts.newMark() }));
  return null;
}

/** A reply that no commit has stored yet is stored now, so that the answer to a message leaves by the outbox too. */
function settle(context: Context & { readonly committed?: () => boolean }, reply: Reply): Reply | null {
  return context.committed?.() === true ? reply : context.commit(() => ({ reply, changes: [], posts: [] }));
}

function refuse(context: Context, action: string, reply: Reply): Reply | null {
  return context.commit(() => ({ reply, changes: [{ action, subject: `channel:${context.channel.name}`, before: null, after: null }], posts: [] }));
}
