import { Client, type ClientOptions, Events, GatewayIntentBits, Partials, type RateLimitData } from "discord.js";
import type { Ended } from "./ended.ts";

const SILENCE_MAX_MS = 5 * 60_000;

/** Codes with which the gateway closes for good, and what has to be mended. */
const closed: Readonly<Record<number, string>> = {
  4004: "the chat does not accept DISCORD_TOKEN: make a new one in the developer portal, Bot, Reset Token",
  4013: "the chat does not know what the bot asks to hear",
  4014: "the message content switch is off: turn it on in the developer portal, Bot, Message Content Intent",
};

/**
 * Edits of old messages have a limit beside the usual one, which the client would wait for with every later edit behind
 * it: such an edit is given back. The usual limits are waited for.
 */
const isOwnLimitOfEdits = ({ method, route, sublimitTimeout }: RateLimitData): boolean =>
  method === "PATCH" && route === "/channels/:id/messages/:id" && sublimitTimeout > 0;

export interface OpenClient {
  readonly client: Client;
  /** Why the connection is over for good. */
  readonly ended: Promise<Ended>;
  readonly end: (kind: Ended["kind"], why: string) => void;
  /** Ends when the gateway has given no sign of life for minutes, whatever the client believes. */
  readonly watch: () => void;
}

/**
 * A client that ends by saying why; it is not yet logged in.
 *
 * @param wallMs - the clock that the client itself goes by
 */
export function openClient(overrides: Partial<ClientOptions>, wallMs: () => number, log: (error: unknown, doing: string) => void): OpenClient {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.MessageContent],
    partials: [Partials.Message, Partials.Channel],
    allowedMentions: { parse: [] },
    ...overrides,
    rest: { rejectOnRateLimit: isOwnLimitOfEdits, ...overrides.rest },
  });
  let resolveEnded: (ended: Ended) => void = () => {};
  const ended = new Promise<Ended>((resolve) => {
    resolveEnded = resolve;
  });
  const end: OpenClient["end"] = (kind, why) => resolveEnded({ kind, why });
  let heardAtMs = wallMs();
  client.on(Events.Raw, () => {
    heardAtMs = wallMs();
  });
  client.on(Events.Error, (error) => log(error, "the chat client"));
  client.on(Events.ShardError, (error) => log(error, "the gateway"));
  client.on(Events.Invalidated, () => end("lost", "the chat ended the session"));
  client.on(Events.ShardDisconnect, ({ code }) => {
    const mend = closed[code];
    end(mend === undefined ? "lost" : "settings", mend ?? `the gateway closed for good with code ${String(code)}`);
  });
  const watch = (): void => {
    const pingedAtMs = client.ws.shards.first()?.lastPingTimestamp ?? 0;
    if (wallMs() - Math.max(heardAtMs, pingedAtMs) > SILENCE_MAX_MS) {
      end("lost", "the gateway gave no sign of life for five minutes");
    }
  };
  return { client, ended, end, watch };
}
