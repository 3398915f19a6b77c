import { randomBytes } from "node:crypto";
import { instant } from "../core/kinds.ts";
import type { Db } from "../db/write.ts";
import type { DiscordSettings } from "./config/environment.ts";
import { makeDesk } from "./desk/desk.ts";
import { runDiscord } from "./discord/discord.ts";
import { rolesByEnvironment } from "./discord/rolesByEnvironment.ts";
import { newMark } from "./outbox/newMark.ts";
import { commands } from "./registry.ts";
import { settle } from "./rehearsalBot.ts";

/** Joins the real chat on the real clock until it ends for good or the process is told to stop. */
export async function joinRealChat(parts: {
  readonly db: Db;
  readonly token: string;
  readonly settings: DiscordSettings;
  readonly seed: number;
  readonly log: (error: unknown, doing: string) => void;
}): Promise<string> {
  const { db, token, settings, seed, log } = parts;
  const now = () => instant(Date.now());
  const desk = makeDesk({ db, commands, now, newMark: () => newMark(randomBytes), rolesOf: rolesByEnvironment(settings), seed, log });
  const running = await runDiscord({ token, settings, db, desk, commands, settle: (sender, at) => settle(db, at, sender), now, log });
  const asked = new Promise<string>((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) {
      process.once(signal, () => resolve(`stopped by ${signal}`));
    }
  });
  const why = await Promise.race([running.ended, asked]);
  await running.stop();
  return why;
}
