import { Client, type ClientOptions, Events, GatewayIntentBits, Partials } from "discord.js";

const DISALLOWED_INTENTS = 4014;
const SILENCE_MAX_MS = 5 * 60_000;

export interface OpenClient {
  readonly client: Client;
  /** Why the connection is over for good. */
  readonly ended: Promise<string>;
  readonly end: (reason: string) => void;
  /** Ends when the gateway has given no sign of life for minutes, whatever the client believes. */
  readonly watch: () => void;
}

/** A client that ends by saying why; it is not yet logged in. */
export function openClient(overrides: Partial<ClientOptions>, log: (error: unknown, doing: string) => void): OpenClient {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.MessageContent],
    partials: [Partials.Message, Partials.Channel],
    allowedMentions: { parse: [] },
    ...overrides,
  });
  let end: (reason: string) => void = () => {};
  const ended = new Promise<string>((resolve) => {
    end = resolve;
  });
  client.on(Events.Error, (error) => log(error, "the chat client"));
  client.on(Events.ShardError, (error) => log(error, "the gateway"));
  client.on(Events.Invalidated, () => end("the chat ended the session"));
  client.on(Events.ShardDisconnect, ({ code }) =>
    end(
      code === DISALLOWED_INTENTS
        ? "the message content switch is off in the application's settings"
        : `the gateway closed for good with code ${String(code)}`,
    ),
  );
  const watch = (): void => {
    const lastMs = client.ws.shards.first()?.lastPingTimestamp ?? 0;
    // The library stamps its pings with this very clock.
    if (lastMs > 0 && Date.now() - lastMs > SILENCE_MAX_MS) {
      end("the gateway gave no sign of life for five minutes");
    }
  };
  return { client, ended, end, watch };
}
