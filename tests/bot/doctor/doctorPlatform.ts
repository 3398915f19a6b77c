import { createServer, type IncomingMessage } from "node:http";
import type { AddressInfo } from "node:net";
import { PermissionFlagsBits } from "discord.js";
import { afterEach } from "vitest";
import type { DiscordSettings } from "../../../bot/config/environment.ts";

export const GUILD = "200000000000000001";
export const BOT = "100000000000000001";
export const ORDERS = "300000000000000001";
export const LEAD_ROLE = "600000000000000001";
export const BOT_ROLE = "600000000000000002";
/** Looks like a token and is one nowhere. */
export const PLANTED = "planted-token.that-must.never-show";
export const MAY = {
  all:
    PermissionFlagsBits.ViewChannel |
    PermissionFlagsBits.SendMessages |
    PermissionFlagsBits.EmbedLinks |
    PermissionFlagsBits.AttachFiles |
    PermissionFlagsBits.ReadMessageHistory |
    PermissionFlagsBits.PinMessages,
};

export const settings: DiscordSettings = {
  guildId: GUILD,
  roleIds: { viewer: null, rep: null, technician: null, lead: LEAD_ROLE },
  channels: new Map([["plover-orders", ORDERS]]),
  people: new Map(),
};

export interface Answer {
  /** It is never answered. */
  readonly hangs?: true;
  readonly status?: number;
  readonly body: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}
type Answers = Readonly<Record<string, Answer>>;

/** What a platform answers where all is well; a test replaces what it is about. */
export const wellAnswers = {
  "/users/@me": { body: { id: BOT, username: "rangecall" } },
  "/applications/@me": { body: { id: BOT, flags: 1 << 19, interactions_endpoint_url: null } },
  "/gateway/bot": { body: { url: "", shards: 1, session_start_limit: { total: 1000, remaining: 900, reset_after: 120_000, max_concurrency: 1 } } },
  [`/guilds/${GUILD}`]: {
    body: {
      id: GUILD,
      owner_id: "500000000000000001",
      roles: [
        { id: GUILD, permissions: "0" },
        { id: LEAD_ROLE, permissions: "0" },
        { id: BOT_ROLE, permissions: String(MAY.all) },
      ],
    },
  },
  [`/guilds/${GUILD}/channels`]: { body: [{ id: ORDERS, type: 0, permission_overwrites: [] }] },
  [`/guilds/${GUILD}/members/${BOT}`]: { body: { user: { id: BOT }, roles: [BOT_ROLE] } },
} satisfies Answers;

const closers: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const close of closers.splice(0)) {
    await close();
  }
});

/** A platform on this machine that answers as told, and what it was asked. */
export async function doctorPlatform(
  changed: Answers,
): Promise<{ readonly api: string; readonly asked: readonly string[]; readonly tokens: Set<string> }> {
  const answers: Answers = { ...wellAnswers, ...changed };
  const asked: string[] = [];
  const tokens = new Set<string>();
  const server = createServer((request: IncomingMessage, response) => {
    const path = (request.url ?? "").replace(/^\/api\/v10/, "");
    asked.push(path);
    tokens.add(request.headers.authorization ?? "");
    const { hangs, status = 200, body, headers = {} } = answers[path] ?? { status: 404, body: { code: 0, message: "404: Not Found" } };
    if (hangs) {
      return;
    }
    response.writeHead(status, { "content-type": "application/json", ...headers }).end(JSON.stringify(body));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  closers.push(
    () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  );
  return { api: `http://127.0.0.1:${(server.address() as AddressInfo).port}/api`, asked, tokens };
}
