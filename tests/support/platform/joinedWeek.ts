import { joinRealChat, type RealChatParts } from "../../../bot/realChat.ts";
import { type Instant, instant } from "../../../core/kinds.ts";
import type { Db } from "../../../db/write.ts";
import { demoWeek } from "../demoWeek.ts";
import { openPlatform, type Platform } from "./platform.ts";
import { demoWorld, settingsOf } from "./world.ts";

/** The Monday of the demo week, 09:00 in UTC. */
export const MONDAY_9 = instant(Date.UTC(2027, 4, 3, 9, 0));

export type Running = ReturnType<typeof joinRealChat>;

/** The demo week's bot and the platform it joins, on a clock that goes on by itself and that the test moves forward. */
export interface JoinedWeek {
  readonly platform: Platform;
  readonly db: Db;
  /** Everything the bot logged as gone wrong. */
  readonly bugs: { readonly error: unknown; readonly doing: string }[];
  readonly now: () => Instant;
  readonly forward: (minutes: number) => void;
  /** Joins, as a new process would; the one before is to be stopped or cut off. */
  readonly start: (more?: Partial<RealChatParts>) => Running;
  readonly close: () => Promise<void>;
}

export async function joinedWeek(at: Instant = MONDAY_9): Promise<JoinedWeek> {
  const openedMs = performance.now();
  let forwardMs = 0;
  const clock = (): Instant => instant(at + forwardMs + Math.floor(performance.now() - openedMs));
  const world = demoWorld();
  const platform = await openPlatform(world, clock);
  const week = await demoWeek();
  const bugs: { error: unknown; doing: string }[] = [];
  const started: Running[] = [];
  const start: JoinedWeek["start"] = (more = {}) => {
    const running = joinRealChat({
      ...{ db: week.db, token: world.token, settings: settingsOf(world), seed: 5, now: clock },
      log: (error, doing) => void bugs.push({ error, doing }),
      client: localClient(platform),
      ...more,
    });
    started.push(running);
    return running;
  };
  return {
    ...{ platform, db: week.db, bugs, now: clock, start },
    forward: (minutes) => {
      forwardMs += minutes * 60_000;
    },
    close: async () => {
      for (const running of started) {
        await running.stop();
      }
      await platform.stop();
      week.close();
    },
  };
}

/** The true client, sent to this machine: less patient and identifying at once. */
export const localClient = ({ api }: Pick<Platform, "api">): NonNullable<RealChatParts["client"]> => ({
  waitGuildTimeout: 200,
  rest: { api, offset: 0, timeout: 2000, retries: 2, globalRequestsPerSecond: 5000 },
  ws: { buildIdentifyThrottler: () => Promise.resolve({ waitForIdentify: () => Promise.resolve() }) },
});
