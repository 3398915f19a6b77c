import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { type WebSocket, WebSocketServer } from "ws";

export const GUILD = "200000000000000001";
export const ORDERS = "300000000000000001";
export const BOT = "400000000000000001";
export const PERSON = "500000000000000001";
export const REP_ROLE = "600000000000000001";
export const TOKEN = "local";

export interface Request {
  readonly method: string;
  readonly path: string;
  readonly body: Readonly<Record<string, unknown>>;
}

interface Answer {
  readonly status: number;
  readonly body?: unknown;
}

export interface FakeDiscord {
  readonly api: string;
  readonly requests: readonly Request[];
  /** Resolves with the first request, past or future, that fits. */
  readonly seen: (fits: (request: Request) => boolean) => Promise<Request>;
  readonly dispatch: (event: string, data: unknown) => void;
  /** What the next request to this path gets instead, the effect of a post done all the same. */
  readonly answerNext: (path: string, status: number) => void;
  /** Lets a message of a person be in the channel. */
  readonly put: (id: string, content: string) => void;
  readonly closeGateway: (code: number) => void;
  readonly stop: () => Promise<void>;
}

const user = (id: string, bot: boolean) => ({ id, username: `user${id.slice(-1)}`, discriminator: "0", avatar: null, bot });
export const member = (id: string) => ({
  user: user(id, id === BOT),
  roles: id === PERSON ? [REP_ROLE] : [],
  joined_at: "2026-01-01T00:00:00.000Z",
  deaf: false,
  mute: false,
  flags: 0,
  permissions: "8",
});

export const message = (id: string, author: string, content: string, more: Readonly<Record<string, unknown>> = {}) => ({
  id,
  channel_id: ORDERS,
  author: user(author, author === BOT),
  content,
  timestamp: "2026-01-01T00:00:00.000Z",
  edited_timestamp: null,
  tts: false,
  mention_everyone: false,
  mentions: [],
  mention_roles: [],
  attachments: [],
  embeds: [],
  pinned: false,
  type: 0,
  ...more,
});

/** The moments of an interaction's id must be now, or the client counts it as too late. */
export const freshId = (): string => ((BigInt(Date.now() - 1_420_070_400_000) << 22n) + 7n).toString();

export function press(customId: string): unknown {
  return {
    id: freshId(),
    application_id: BOT,
    type: 3,
    token: "interactiontoken",
    version: 1,
    guild_id: GUILD,
    channel_id: ORDERS,
    channel: { id: ORDERS, type: 0, name: "orders" },
    member: member(PERSON),
    message: message("700000000000000001", BOT, ""),
    data: { id: 1, component_type: 2, custom_id: customId },
    locale: "en-GB",
    entitlements: [],
    authorizing_integration_owners: {},
    attachment_size_limit: 10_485_760,
  };
}

const roleRow = (id: string) => ({
  id,
  name: id,
  color: 0,
  hoist: false,
  position: 0,
  permissions: "8",
  managed: false,
  mentionable: false,
  flags: 0,
});
const guild = {
  id: GUILD,
  name: "Guild",
  owner_id: PERSON,
  roles: [roleRow(GUILD), roleRow(REP_ROLE)],
  emojis: [],
  stickers: [],
  features: [],
  member_count: 2,
  members: [member(BOT), member(PERSON)],
  channels: [{ id: ORDERS, type: 0, name: "orders", guild_id: GUILD, permission_overwrites: [] }],
  threads: [],
  presences: [],
  voice_states: [],
  stage_instances: [],
  guild_scheduled_events: [],
};

interface Stored {
  readonly id: string;
  readonly nonce: unknown;
}

/** The rules of the platform that the bot leans on, on this machine alone. */
export async function fakeDiscord(): Promise<FakeDiscord> {
  const requests: Request[] = [];
  const waiting: { readonly fits: (request: Request) => boolean; readonly resolve: (request: Request) => void }[] = [];
  const stored: (Stored & Record<string, unknown>)[] = [];
  const faults = new Map<string, number>();
  const sockets = new Set<WebSocket>();
  let sequence = 0;
  const server = createServer((incoming, response) => void handle(incoming, response));
  const gateway = new WebSocketServer({ server });
  const frame = (event: string, d: unknown): string => JSON.stringify({ op: 0, t: event, s: ++sequence, d });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;

  function route({ method, path, body }: Request): Answer {
    if (path.startsWith("/gateway/bot")) {
      return { status: 200, body: gatewayRow(port) };
    }
    if (path.endsWith(`/guilds/${GUILD}/commands`)) {
      return { status: 200, body: [] };
    }
    const [, , , channelPart, id] = path.split("/");
    if (path.startsWith(`/channels/${ORDERS}/messages`) && channelPart?.startsWith("messages") && id === undefined) {
      return method === "POST" ? { status: 200, body: store(body) } : { status: 200, body: history(path) };
    }
    if (path.startsWith(`/channels/${ORDERS}/messages/`)) {
      const found = stored.find((row) => row.id === id);
      if (found === undefined) {
        return { status: 404, body: { code: 10008, message: "Unknown Message" } };
      }
      return { status: 200, body: method === "PATCH" ? Object.assign(found, body) : found };
    }
    if (path.startsWith("/interactions/") || method === "DELETE") {
      return { status: 204 };
    }
    return path.startsWith("/webhooks/")
      ? { status: 200, body: message(freshId(), BOT, "") }
      : { status: 404, body: { code: 0, message: `Not here: ${path}` } };
  }

  function store(body: Readonly<Record<string, unknown>>): unknown {
    const twin = body.enforce_nonce === true ? stored.find(({ nonce }) => nonce === body.nonce) : undefined;
    if (twin !== undefined) {
      return twin;
    }
    const id = (BigInt(freshId()) + BigInt(stored.length)).toString();
    const row = { ...message(id, BOT, String(body.content ?? "")), embeds: body.embeds ?? [], nonce: body.nonce };
    stored.push(row);
    return row;
  }

  function history(path: string): unknown {
    const query = new URL(path, "http://127.0.0.1").searchParams;
    const after = BigInt(query.get("after") ?? 0);
    return stored
      .filter(({ id }) => BigInt(id) > after)
      .slice(0, Number(query.get("limit") ?? 50))
      .reverse();
  }

  async function handle(incoming: IncomingMessage, response: ServerResponse): Promise<void> {
    const chunks: Buffer[] = [];
    for await (const chunk of incoming) {
      chunks.push(chunk as Buffer);
    }
    const text = Buffer.concat(chunks).toString("utf8");
    const path = (incoming.url ?? "").replace(/^\/api\/v\d+/, "");
    const body = text === "" ? {} : (JSON.parse(text) as Record<string, unknown>);
    const request = { method: incoming.method ?? "", path, body };
    const isKnown = incoming.headers.authorization === undefined || incoming.headers.authorization === `Bot ${TOKEN}`;
    const answer = isKnown ? route(request) : { status: 401, body: { code: 0, message: "401: Unauthorized" } };
    const fault = faults.get(path);
    faults.delete(path);
    const shown = fault === undefined ? answer : { status: fault, body: { code: 0, message: "fault" } };
    response.writeHead(shown.status, shown.body === undefined ? {} : { "content-type": "application/json" });
    response.end(shown.body === undefined ? "" : JSON.stringify(shown.body));
    requests.push(request);
    for (const one of waiting.filter(({ fits }) => fits(request))) {
      one.resolve(request);
    }
  }

  gateway.on("connection", (socket) => {
    sockets.add(socket);
    socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: 41_250 } }));
    socket.on("message", (raw) => {
      const { op } = JSON.parse(String(raw)) as { op: number };
      if (op === 1) {
        socket.send(JSON.stringify({ op: 11 }));
      }
      if (op === 2) {
        socket.send(frame("READY", readyRow(port)));
        socket.send(frame("GUILD_CREATE", guild));
      }
    });
  });

  return {
    api: `http://127.0.0.1:${port}/api`,
    requests,
    seen: (fits) => {
      const past = requests.find(fits);
      return past === undefined ? new Promise((resolve) => waiting.push({ fits, resolve })) : Promise.resolve(past);
    },
    dispatch: (event, data) => {
      for (const socket of sockets) {
        socket.send(frame(event, data));
      }
    },
    answerNext: (path, status) => void faults.set(path, status),
    put: (id, content) => void stored.push({ ...message(id, PERSON, content), nonce: undefined }),
    closeGateway: (code) => {
      for (const socket of sockets) {
        socket.close(code);
      }
    },
    stop: async () => {
      for (const socket of sockets) {
        socket.terminate();
      }
      gateway.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

const gatewayRow = (port: number) => ({
  url: `ws://127.0.0.1:${port}`,
  shards: 1,
  session_start_limit: { total: 1000, remaining: 1000, reset_after: 0, max_concurrency: 1 },
});

const readyRow = (port: number) => ({
  v: 10,
  user: user(BOT, true),
  session_id: "session",
  resume_gateway_url: `ws://127.0.0.1:${port}`,
  guilds: [{ id: GUILD, unavailable: true }],
  application: { id: BOT, flags: 0 },
});
