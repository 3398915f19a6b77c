import { type Client, type ClientOptions, DiscordAPIError, DiscordjsErrorCodes, Events } from "discord.js";
import { schedule } from "node-cron";
import type { Instant } from "../../core/kinds.ts";
import type { Db } from "../../db/write.ts";
import type { Command } from "../chat/defineCommand.ts";
import type { Desk, Sender } from "../chat/types.ts";
import type { DiscordSettings } from "../config/environment.ts";
import { bindGuild } from "./bindGuild.ts";
import { catchUp } from "./catchUp.ts";
import { channelsOf } from "./channels.ts";
import { commandRegistration } from "./commandRegistration.ts";
import { discordSender } from "./discordSender.ts";
import { type Doors, openDoors } from "./doors.ts";
import { makeSettler } from "./makeSettler.ts";
import { membersOf } from "./members.ts";
import { type OpenClient, openClient } from "./openClient.ts";

const EVERY_20_S = "*/20 * * * * *";

export interface DiscordParts {
  readonly token: string;
  readonly settings: DiscordSettings;
  readonly db: Db;
  readonly desk: Desk;
  readonly commands: readonly Command[];
  /** Everything due now: reminders, then the outbox. */
  readonly settle: (sender: Sender, now: () => Instant) => Promise<void>;
  readonly now: () => Instant;
  readonly log: (error: unknown, doing: string) => void;
  /** For a local server in place of the platform. */
  readonly client?: Partial<ClientOptions>;
}

export interface RunningDiscord {
  readonly stop: () => Promise<void>;
  /** Why the bot is out of the chat for good; a new process must be started then. */
  readonly ended: Promise<string>;
}

/** Joins the desk to the chat and keeps it there until it is stopped or the chat has ended for good. */
export async function runDiscord(parts: DiscordParts): Promise<RunningDiscord> {
  const opened = openClient(parts.client ?? {}, parts.log);
  const { client, ended, end } = opened;
  const { settings, db, log } = parts;
  const channels = channelsOf(client, settings);
  const members = membersOf(db, settings);
  const sender = discordSender({ channels, calledOf: members.calledOf, self: () => client.user?.id ?? null, onStop: end });
  const settle = makeSettler(() => parts.settle(sender, parts.now));
  const doors = openDoors({ guildId: settings.guildId, db, desk: parts.desk, channels, members, settle });
  const guarded = guard(log);
  const reader = makeReader(() => catchUp(db, channels, (message) => doors.message(message, true)));
  listen(client, doors, reader, guarded);
  if (!bindGuild(db, settings.guildId)) {
    end("this database belongs to another guild");
    return { stop: async () => {}, ended };
  }
  const clock = schedule(EVERY_20_S, () => guarded("the clock", () => tick(opened, reader, settle)), { timezone: "UTC", noOverlap: true });
  const isIn = await enter(parts, opened);
  if (isIn) {
    await guarded("reading what was missed", reader.read);
    await guarded("the outbox", settle);
  }
  const stop = async (): Promise<void> => {
    await clock.stop();
    await guarded("the outbox", settle);
    await client.destroy();
    end("stopped");
  };
  return { stop, ended };
}

type Guarded = (doing: string, work: () => Promise<void>) => Promise<void>;

/** Nothing that goes wrong with one arrival ends the bot. */
function guard(log: DiscordParts["log"]): Guarded {
  return async (doing, work) => {
    try {
      await work();
    } catch (error) {
      log(error, doing);
    }
  };
}

/** Knows whether all that was said before now has been read. */
interface MissedReader {
  readonly isComplete: () => boolean;
  readonly lose: () => void;
  readonly read: () => Promise<void>;
}

function makeReader(readMissed: () => Promise<void>): MissedReader {
  let losses = 1;
  let lossesRead = 0;
  const lose = (): void => {
    losses += 1;
  };
  const read = makeSettler(async () => {
    const before = losses;
    await readMissed();
    lossesRead = before;
  });
  return { isComplete: () => lossesRead === losses, lose, read };
}

function listen(client: Client, doors: Doors, reader: MissedReader, guarded: Guarded): void {
  const readMissed = (): void => {
    if (client.isReady()) {
      reader.lose();
      void guarded("reading what was missed", reader.read);
    }
  };
  client.on(Events.MessageCreate, (message) => void guarded("a message", () => doors.message(message, reader.isComplete())));
  client.on(Events.MessageUpdate, (_before, message) => {
    if (message.editedTimestamp !== null) {
      void guarded("an edited message", async () => doors.message(message.partial ? await message.fetch() : message, false));
    }
  });
  client.on(Events.InteractionCreate, (interaction) => void guarded("an interaction", () => doors.interaction(interaction)));
  client.on(Events.ShardReconnecting, reader.lose);
  client.on(Events.ShardReady, readMissed);
  client.on(Events.ShardResume, readMissed);
}

async function tick({ client, watch }: OpenClient, reader: MissedReader, settle: () => Promise<void>): Promise<void> {
  watch();
  if (!client.isReady()) {
    return;
  }
  await (reader.isComplete() ? Promise.resolve() : reader.read());
  await settle();
}

/** Logs in and registers the commands; false when the chat lets the bot not in. */
async function enter({ token, settings, commands }: DiscordParts, { client, ended, end }: OpenClient): Promise<boolean> {
  const ready = new Promise<true>((resolve) => client.once(Events.ClientReady, () => resolve(true)));
  try {
    await client.login(token);
    if (!(await Promise.race([ready, ended.then(() => false)]))) {
      return false;
    }
    if (!client.guilds.cache.has(settings.guildId)) {
      end(`the bot is no member of the guild ${settings.guildId}`);
      return false;
    }
    await client.application?.commands.set([...commandRegistration(commands)], settings.guildId);
    return true;
  } catch (error) {
    end(isBadToken(error) ? "the chat does not accept DISCORD_TOKEN" : `the chat could not be entered: ${String(error)}`);
    return false;
  }
}

function isBadToken(error: unknown): boolean {
  return (
    (error instanceof DiscordAPIError && error.status === 401) ||
    (error instanceof Error && "code" in error && error.code === DiscordjsErrorCodes.TokenInvalid)
  );
}
