import { PermissionFlagsBits } from "discord.js";
import { type Answered, nothing, ok, refused } from "./answer.ts";
import { faultsOf } from "./bodies.ts";
import type { Asked } from "./faults.ts";
import type { Interactions } from "./interactions.ts";
import { applicationRow, channelRow, guildRow, memberRow, userRow } from "./rows.ts";
import { messageRow, type Store } from "./store.ts";
import type { World } from "./world.ts";

export interface RouteParts {
  readonly world: World;
  readonly store: Store;
  readonly interactions: Interactions;
  /** The guild's registered commands. */
  readonly commands: { list: readonly Readonly<Record<string, unknown>>[]; writes: number };
  readonly gatewayUrl: () => string;
  /** Hears of everything the platform refuses for what it is. */
  readonly complain: (line: string) => void;
  readonly tell: (event: string, data: unknown) => void;
  /** Edits of messages older than an hour are refused when it says so. */
  readonly refusesOldEdits: () => boolean;
  readonly now: () => number;
}

const AN_HOUR_MS = 3_600_000;
const invalid = (faults: readonly string[]): Answered => refused(400, 50035, "Invalid Form Body", { errors: {}, faults });

/** Answers a request as the platform does, its effect included. */
export function route(parts: RouteParts, asked: Asked): Answered {
  const { world, interactions } = parts;
  const [path = "", query = ""] = asked.path.split("?");
  const [, room = "", first = "", second = "", third = "", fourth = "", fifth = ""] = path.split("/");
  switch (room) {
    case "gateway":
      return ok({ url: parts.gatewayUrl(), shards: 1, session_start_limit: { total: 1000, remaining: 999, reset_after: 0, max_concurrency: 1 } });
    case "users":
      return ok(userRow(world.bot, true));
    case "applications":
      return first === "@me" ? ok(applicationRow(world)) : fourth === "commands" ? commandsRoute(parts, asked) : refused(404, 0, path);
    case "guilds":
      return first !== world.guild ? refused(404, 10004, "Unknown Guild") : ok(second === "members" ? memberRow(world, third) : guildRow(world));
    case "channels":
      return channelRoute(parts, asked, { channel: first, rest: [second, third, fourth], query: new URLSearchParams(query) });
    case "interactions":
      return third === "callback" ? interactions.callback(first, asked) : refused(404, 0, path);
    case "webhooks":
      return fourth === "" && fifth === "" && third === "" ? refused(405, 0, path) : interactions.webhook(second, asked);
    default:
      return refused(404, 0, `404: not here: ${path}`);
  }
}

function commandsRoute({ commands, world, complain }: RouteParts, { method, body }: Asked): Answered {
  if (method === "PUT") {
    const list = body as unknown as readonly Readonly<Record<string, unknown>>[];
    const faults = list.flatMap((command) => faultsOf("command", command));
    if (faults.length > 0) {
      complain(`commands: ${faults.join("; ")}`);
      return invalid(faults);
    }
    commands.writes += 1;
    commands.list = list.map((command, index) => ({
      ...{ id: `80000000000000${String(index).padStart(4, "0")}`, application_id: world.bot, guild_id: world.guild, version: "1" },
      ...{ type: 1, default_member_permissions: null, nsfw: false, description: "", options: [] },
      ...command,
    }));
  }
  return ok(commands.list);
}

interface Where {
  readonly channel: string;
  readonly rest: readonly string[];
  readonly query: URLSearchParams;
}

function channelRoute(parts: RouteParts, asked: Asked, { channel, rest, query }: Where): Answered {
  const { world, store } = parts;
  const allowed = world.allowed.get(channel);
  const may = (flag: bigint): boolean => allowed !== undefined && (allowed & flag) !== 0n;
  const [room, id = "", pinned = ""] = rest;
  if (allowed === undefined) {
    return refused(404, 10003, "Unknown Channel");
  }
  if (!may(PermissionFlagsBits.ViewChannel)) {
    return refused(403, 50001, "Missing Access");
  }
  if (room !== "messages") {
    return ok(channelRow(world, channel));
  }
  if (id === "pins") {
    return pinRoute(parts, asked, channel, pinned, may(PermissionFlagsBits.PinMessages));
  }
  if (id === "" && asked.method === "POST") {
    return sendRoute(parts, asked, channel, may);
  }
  if (id === "") {
    // The platform shows no history, and no error, to whom may not read it.
    return ok(may(PermissionFlagsBits.ReadMessageHistory) ? store.page(channel, query).map((said) => messageRow(world, said)) : []);
  }
  return oneRoute(parts, asked, channel, id);
}

function pinRoute({ store }: RouteParts, { method }: Asked, channel: string, id: string, mayPin: boolean): Answered {
  const said = store.find(channel, id);
  if (!mayPin) {
    return refused(403, 50013, "Missing Permissions");
  }
  if (said === null) {
    return refused(404, 10008, "Unknown Message");
  }
  said.isPinned = method === "PUT";
  return nothing;
}

function sendRoute(parts: RouteParts, asked: Asked, channel: string, may: (flag: bigint) => boolean): Answered {
  const { world, store, complain } = parts;
  const { SendMessages, EmbedLinks, AttachFiles } = PermissionFlagsBits;
  if (!may(SendMessages) || !may(EmbedLinks) || (asked.files.length > 0 && !may(AttachFiles))) {
    return refused(403, 50013, "Missing Permissions");
  }
  const faults = faultsOf("message", asked.body);
  if (faults.length > 0) {
    complain(`message: ${faults.join("; ")}`);
    return invalid(faults);
  }
  const { nonce, enforce_nonce } = asked.body;
  const twin = enforce_nonce === true ? store.messages.find((said) => said.channel === channel && said.nonce === nonce && !said.isGone) : undefined;
  if (twin !== undefined) {
    return ok(messageRow(world, twin));
  }
  const said = store.add(channel, world.bot, { ...asked.body, attachments: [] }, asked.files);
  parts.tell("MESSAGE_CREATE", { ...messageRow(world, said), guild_id: world.guild, member: memberRow(world, world.bot) });
  return ok(messageRow(world, said));
}

function oneRoute(parts: RouteParts, asked: Asked, channel: string, id: string): Answered {
  const { world, store, complain } = parts;
  const said = store.find(channel, id);
  if (said === null) {
    return refused(404, 10008, "Unknown Message");
  }
  if (asked.method === "DELETE") {
    said.isGone = true;
    parts.tell("MESSAGE_DELETE", { id, channel_id: channel, guild_id: world.guild });
    return nothing;
  }
  if (asked.method === "PATCH") {
    const faults = faultsOf("edit", asked.body);
    if (faults.length > 0) {
      complain(`edit: ${faults.join("; ")}`);
      return invalid(faults);
    }
    if (said.author !== world.bot) {
      return refused(403, 50005, "Cannot edit a message authored by another user");
    }
    if (parts.refusesOldEdits() && parts.now() - said.saidAtMs > AN_HOUR_MS) {
      return refused(429, 30046, "Maximum number of edits to messages older than 1 hour reached. Try again later.");
    }
    store.change(said, asked.body, asked.files);
  }
  return ok(messageRow(world, said));
}
