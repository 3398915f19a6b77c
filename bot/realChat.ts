import { randomBytes } from "node:crypto";
import { type Instant, instant } from "../core/kinds.ts";
import type { Db } from "../db/write.ts";
import { dueIn, postAll } from "./chores.ts";
import type { DiscordSettings } from "./config/environment.ts";
import { makeAnswers } from "./desk/answers.ts";
import { makeDesk } from "./desk/desk.ts";
import type { DeskParts } from "./desk/deskParts.ts";
import { type DiscordParts, type RunningDiscord, runDiscord } from "./discord/discord.ts";
import { rolesByEnvironment } from "./discord/rolesByEnvironment.ts";
import { newMark } from "./outbox/newMark.ts";
import type { OutboxDeps } from "./outbox/outboxDeps.ts";
import { postOpenAnew } from "./outbox/postOpenAnew.ts";
import { commands } from "./registry.ts";

export interface RealChatParts extends Pick<DiscordParts, "client"> {
  readonly db: Db;
  readonly token: string;
  readonly settings: DiscordSettings;
  readonly seed: number;
  readonly log: (error: unknown, doing: string) => void;
  /** The venue's clock; the one on the wall unless a test hands in its own. */
  readonly now?: () => Instant;
  /** The clock the client itself goes by. */
  readonly wallMs?: () => number;
  /** Where a drill may cut the process short. */
  readonly crash?: NonNullable<DeskParts["crash"]> & NonNullable<OutboxDeps["crash"]>;
}

/** The desk, the outbox and the chores, joined to the real chat. */
export function joinRealChat({ crash, ...parts }: RealChatParts): RunningDiscord {
  const { db, settings, seed, log } = parts;
  const wallMs = parts.wallMs ?? (() => Date.now());
  const now = parts.now ?? (() => instant(wallMs()));
  const mark = () => newMark(randomBytes);
  const drilled = crash === undefined ? {} : { crash };
  return runDiscord({
    ...parts,
    ...{ commands, now, wallMs },
    desk: makeDesk({ db, commands, now, newMark: mark, rolesOf: rolesByEnvironment(settings), seed, log, ...drilled }),
    answers: makeAnswers({ db, now, newMark: mark }),
    postAnew: (tx) => postOpenAnew(tx, now(), mark),
    post: (sender) => postAll({ db, sender, ...drilled }, now),
    due: () => dueIn(db, seed, now),
  });
}
