import type { Client, ClientOptions } from "discord.js";
import { schedule } from "node-cron";
import type { Instant } from "../../core/kinds.ts";
import type { Db, Tx } from "../../db/write.ts";
import type { Desk, Sender } from "../chat/types.ts";
import type { Answers } from "../desk/answers.ts";
import { bindGuild } from "./bindGuild.ts";
import { catchUp } from "./catchUp.ts";
import { channelsOf } from "./channels.ts";
import { discordSender } from "./discordSender.ts";
import { openDoors } from "./doors.ts";
import type { Ended } from "./ended.ts";
import { type EnterParts, enter } from "./enter.ts";
import { makeInHand } from "./inHand.ts";
import { lineAtRest } from "./lineAtRest.ts";
import { listen } from "./listen.ts";
import { makeSettler } from "./makeSettler.ts";
import { membersOf } from "./members.ts";
import { makeMissedReader } from "./missedReader.ts";
import { oneAtATime } from "./oneAtATime.ts";
import { type OpenClient, openClient } from "./openClient.ts";
import { makePoster } from "./poster.ts";
import { within } from "./within.ts";

const EVERY_20_S = "*/20 * * * * *";
/** How long a stop waits for what is in hand, and again for the last posts. */
const STOP_PATIENCE_MS = 10_000;
const LEAVE_WITHIN_MS = 3000;
/** Longer than reading what was said in a day away takes. */
const WORK_MAX_MS = 15 * 60_000;

export interface DiscordParts extends EnterParts {
  readonly db: Db;
  readonly desk: Desk;
  readonly answers: Answers;
  /** Posts what waits in the outbox; tells when to come again, null when nothing waits. */
  readonly post: (sender: Sender) => Promise<Instant | null>;
  /** Plans once more what is open, for a guild that has seen nothing of it yet. */
  readonly postAnew: (tx: Tx) => void;
  /** What the clock owes, and new times for benches that changed. */
  readonly due: () => Promise<void>;
  readonly now: () => Instant;
  readonly wallMs: () => number;
  readonly log: (error: unknown, doing: string) => void;
  /** For a local server in place of the platform. */
  readonly client?: Partial<ClientOptions>;
}

export interface RunningDiscord {
  readonly client: Client;
  /** Why the bot is out of the chat for good; a new process must be started then. */
  readonly ended: Promise<Ended>;
  /** Resolves once the bot is in and has read what it missed; false when it was not let in. */
  readonly entered: Promise<boolean>;
  /** What the clock does every 20 seconds. */
  readonly tick: () => Promise<void>;
  /** Takes nothing more in, finishes what is in hand, sends what waits, leaves. */
  readonly stop: () => Promise<void>;
}

/** Joins the desk to the chat and keeps it there until it is stopped or the chat has ended for good. */
export function runDiscord(parts: DiscordParts): RunningDiscord {
  const { settings, db, log } = parts;
  const opened = openClient(parts.client ?? {}, parts.wallMs, log);
  const { client, ended, end } = opened;
  const inHand = makeInHand(parts.wallMs, log);
  const channels = channelsOf(client, settings);
  const members = membersOf(db, settings);
  const sender = discordSender({
    channels,
    calledOf: members.calledOf,
    self: () => client.user?.id ?? null,
    onStop: (why) => end("settings", why),
    now: parts.now,
    log,
  });
  const poster = makePoster(parts, sender, inHand);
  const due = makeSettler(async () => {
    await parts.due();
    await poster.post();
  });
  const changed = async (): Promise<void> => {
    await poster.post();
    await due();
  };
  const opensForm = new Set(parts.commands.filter((command) => command.opensForm).map(({ name }) => name));
  const doors = openDoors({ guildId: settings.guildId, db, desk: parts.desk, answers: parts.answers, channels, members, opensForm, changed, log });
  const reader = makeMissedReader(() =>
    catchUp(db, { channels, now: parts.now }, (message) => doors.message(message, { isLive: false, isInOrder: true })),
  );
  listen(opened, settings.guildId, { doors, reader, inHand });
  const beat = oneAtATime(async () => {
    if (client.isReady()) {
      await (reader.isComplete() ? Promise.resolve() : reader.read());
      await poster.post();
      await due();
    }
  });
  const tick = (): Promise<void> => {
    opened.watch();
    const stuck = inHand.stuckFor(WORK_MAX_MS);
    if (stuck !== null) {
      opened.end("lost", `${stuck} has not come to an end for a quarter of an hour`);
    }
    return beat();
  };
  const clock = schedule(EVERY_20_S, () => inHand.run("the clock", tick), { timezone: "UTC" });
  const entered = begin(parts, opened, async () => {
    parts.answers.missedBefore();
    await inHand.run("reading what was missed", reader.read);
    await inHand.run("the outbox", changed);
  });
  const leave = async (): Promise<void> => {
    doors.close();
    await clock.stop();
    await within(STOP_PATIENCE_MS, inHand.idle());
    await within(STOP_PATIENCE_MS, inHand.run("the last posts", poster.last));
    // A client that is just connecting may never come to an end by itself.
    await within(LEAVE_WITHIN_MS, lineAtRest(client));
    await within(LEAVE_WITHIN_MS, client.destroy());
    end("stopped", "stopped");
  };
  let leaving: Promise<void> | null = null;
  const stop = (): Promise<void> => {
    leaving ??= leave();
    return leaving;
  };
  return { client, ended, entered, tick, stop };
}

/** In the one guild of the database, then whatever comes first: reading what was missed, sending what waits. */
async function begin(parts: DiscordParts, opened: OpenClient, first: () => Promise<void>): Promise<boolean> {
  if (!bindGuild(parts.db, parts.settings.guildId, parts.postAnew)) {
    opened.end("settings", "this database belongs to another guild: mend DISCORD_GUILD_ID, or start with another --data");
    return false;
  }
  const isIn = await enter(parts, opened);
  if (isIn) {
    await first();
  }
  return isIn;
}
