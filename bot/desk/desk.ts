import { DomainError } from "../../core/errors.ts";
import type { Instant } from "../../core/kinds.ts";
import { appendAudit } from "../../db/repositories/audit.ts";
import { findReply, insertInbound } from "../../db/repositories/inbound.ts";
import { benchVersion } from "../../db/repositories/orders.ts";
import { enqueuePost, type PostMark } from "../../db/repositories/outbox.ts";
import { type ChannelRow, channelByName } from "../../db/repositories/people.ts";
import { type Db, type Tx, write } from "../../db/write.ts";
import { readMessage } from "../boundary/readMessage.ts";
import type { Committed, Context } from "../chat/context.ts";
import type { Command } from "../chat/defineCommand.ts";
import type { Actor, Choice, Desk, Incoming, Json, Reply, Typing, Values } from "../chat/types.ts";
import { estimateBench } from "../flows/estimateBench.ts";
import { codeWords } from "../operations/codeWords.ts";
import { keepPosts } from "../outbox/keepPosts.ts";
import { bugCard, domainErrorCard, faultyValuesCard, refusalCard, strangerCard, unknownCommandCard } from "../replies/refusals.ts";
import { withCodeWords } from "../replies/withCodeWords.ts";
import { actorOf, type RolesOf } from "./actorOf.ts";
import { type NameMemory, nameMemory } from "./nameMemory.ts";
import { readingContext } from "./readingContext.ts";
import { routeMessage } from "./routeMessage.ts";
import { routeTable } from "./routeTable.ts";
import { suggest } from "./suggest.ts";

export interface DeskParts {
  readonly db: Db;
  readonly commands: readonly Command[];
  readonly now: () => Instant;
  readonly newMark: () => PostMark;
  readonly rolesOf: RolesOf;
  readonly seed: number;
  readonly log: (error: unknown, reference: string) => void;
  /** Where a drill may kill the process. */
  readonly crash?: (point: "before-commit" | "after-commit") => void;
}

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
  const memory = onFirstUse(() => nameMemory(parts.db));
  return { receive: (incoming) => receive(parts, incoming), suggest: (typing) => suggestFor(parts, memory(), typing) };
}

function onFirstUse<T>(make: () => T): () => T {
  let made: T | null = null;
  return () => {
    made ??= make();
    return made;
  };
}

function suggestFor(parts: DeskParts, memory: NameMemory, { command: name, channel: channelName, sender, ...typing }: Typing): readonly Choice[] {
  const channel = channelByName(parts.db, channelName);
  const command = parts.commands.find((known) => known.name === name);
  const actor = channel === null ? null : actorOf(parts.db, sender, channel, parts.now(), parts.rolesOf);
  if (actor === null || command === undefined) {
    return [];
  }
  memory.refresh();
  return suggest({ command, ...typing }, actor, memory);
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
  return runCommand(parts, command, routed.values, context);
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

async function runCommand(parts: DeskParts, command: Command, values: Values, context: Context): Promise<Reply | null> {
  try {
    const done = await command.handle(values, context);
    return done?.kind === "faults" ? settle(context, faultyValuesCard(command, done.at)) : done === null ? null : settle(context, done);
  } catch (error) {
    if (error instanceof DomainError) {
      return settle(context, domainErrorCard(error));
    }
    const { ref } = parts.newMark();
    parts.log(error, ref);
    return tellOfBug(parts, context, bugCard(ref));
  }
}

/** The answer to a message leaves by the outbox, that to its failure too; nothing is kept of it, so that it may be sent again. */
function tellOfBug(parts: DeskParts, { key, channel }: Pick<Context, "key" | "channel">, reply: Reply): Reply | null {
  if (!key.startsWith("message:") || reply.kind !== "card") {
    return reply;
  }
  const { card } = reply;
  write(parts.db, (tx) => enqueuePost(tx, { channel: channel.name, dedupeKey: `answer:${key}`, card, at: parts.now(), ...parts.newMark() }));
  return null;
}

/** A reply that no commit has stored yet is stored now, so that the answer to a message leaves by the outbox too. */
function settle(context: Context & { readonly committed?: () => boolean }, reply: Reply): Reply | null {
  return context.committed?.() === true ? reply : context.commit(() => ({ reply, changes: [], posts: [] }));
}

function refuse(context: Context, action: string, reply: Reply): Reply | null {
  return context.commit(() => ({ reply, changes: [{ action, subject: `channel:${context.channel.name}`, before: null, after: null }], posts: [] }));
}

function contextOf(
  parts: DeskParts,
  incoming: Incoming,
  channel: ChannelRow,
  known: Actor | null,
  now: Instant,
): Context & { readonly committed: () => boolean } {
  const actor = known ?? {
    person: null,
    name: incoming.sender.platformId,
    roles: [],
    truck: null,
    zone: "UTC",
    ownZone: "UTC",
    lengthUnit: "in" as const,
  };
  let isCommitted = false;
  const commit = (work: (tx: Tx) => Committed): Reply | null => {
    if (isCommitted) {
      throw new Error("a command commits once");
    }
    parts.crash?.("before-commit");
    const reply = write(parts.db, (tx) => {
      const known = findReply(tx, incoming.key);
      return known === null ? (commitAll(parts, tx, { incoming, channel, actor, now }, work(tx)) as Json) : (known.reply as Json);
    }) as Reply | null;
    isCommitted = true;
    parts.crash?.("after-commit");
    return reply;
  };
  return {
    actor,
    now,
    key: incoming.key,
    channel,
    committed: () => isCommitted,
    read: (query) => query(parts.db),
    estimate: (truck, extra) => estimateBench(parts.db, parts.seed, { truck, now: parts.now(), extra }),
    commit,
    commitAt: (truck, version, work) => (benchVersion(parts.db, truck) === version ? commit(work) : "moved"),
  };
}

/** Inbound key with the reply, audit and outbox, beside the rows the work has changed. */
function commitAll(
  parts: DeskParts,
  tx: Tx,
  at: { readonly incoming: Incoming; readonly channel: ChannelRow; readonly actor: Actor; readonly now: Instant },
  done: Committed,
): Reply | null {
  const { incoming, channel, actor, now } = at;
  const words = codeWords(tx);
  const answer = done.reply?.kind === "card" ? done.reply : null;
  const leavesByOutbox = incoming.kind === "message" && answer !== null;
  const isForTheLeadAlone = actor.roles.includes("lead") && !leavesByOutbox && answer?.audience === "asker";
  const shown = answer === null || isForTheLeadAlone ? done.reply : { ...answer, card: withCodeWords(answer.card, words) };
  const reply = leavesByOutbox ? null : shown;
  const answeredAt = incoming.kind === "message" ? now : null;
  insertInbound(tx, { key: incoming.key, at: now, channel: channel.name, personId: actor.person, reply, answeredAt });
  for (const { action, subject, before, after, player } of done.changes) {
    appendAudit(tx, { at: now, personId: actor.person, action, subject, body: { before, after }, playerId: player ?? null });
  }
  if (leavesByOutbox && shown?.kind === "card") {
    enqueuePost(tx, { channel: channel.name, dedupeKey: `answer:${incoming.key}`, card: shown.card, at: now, ...parts.newMark() });
  }
  keepPosts(tx, done.posts, now, parts.newMark);
  return reply;
}
