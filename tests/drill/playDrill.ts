import { randomBytes } from "node:crypto";
import type { Action, Desk } from "../../bot/chat/types.ts";
import { newMark } from "../../bot/outbox/newMark.ts";
import { runOutboxOnce } from "../../bot/outbox/outboxLoop.ts";
import { rehearsalClock, rehearsalDesk } from "../../bot/rehearsalBot.ts";
import { openDatabase } from "../../db/open.ts";
import { orderBySource } from "../../db/repositories/orders.ts";
import type { Db } from "../../db/write.ts";
import { MONDAY, migrationsFolder } from "../db/migrationsFolder.ts";
import { answersIn, databaseIn, platformIn } from "./drillFolder.ts";
import { type DrillStep, drillChannel, drillScript, drillSender } from "./drillScript.ts";
import { appendLine, readLines } from "./durableLines.ts";
import { filePlatform, type PlatformLine } from "./filePlatform.ts";

/** The Go of the first post that showed the order as a draft: what a rep with an old screen would press. */
function goOf(db: Db, folder: string, message: string): Action {
  const row = orderBySource(db, `message:${message}`);
  const buttons = readLines<PlatformLine>(platformIn(folder)).flatMap(({ card }) => card.buttons);
  const found = buttons.find(({ label, action }) => label === "Go" && action.subject === `order:${row?.id}`);
  if (found === undefined) {
    throw new Error(`no post in the channel has a Go for ${message}`);
  }
  return found.action;
}

async function play(db: Db, desk: Desk, folder: string, step: DrillStep): Promise<void> {
  const arrival = { key: step.key, channel: drillChannel, sender: drillSender };
  if (step.kind === "message") {
    await desk.receive({ ...arrival, kind: "message", message: step.message, text: step.text });
    return;
  }
  const answer = await desk.receive({ ...arrival, kind: "press", action: goOf(db, folder, step.message), picked: [] });
  appendLine(answersIn(folder), { message: step.message, kind: answer?.kind === "card" ? answer.card.kind : null });
}

/** Plays the script to its end on the database and the platform's file of a folder, and closes it. */
export async function playDrill(
  folder: string,
  isBlind: boolean,
  crash: (point: string) => void,
  begun: () => void = () => undefined,
): Promise<void> {
  const { db, close } = await openDatabase({ path: databaseIn(folder), create: false, now: MONDAY, migrationsFolder });
  begun();
  const { now } = rehearsalClock(db);
  const fail = (error: unknown): never => {
    throw error;
  };
  const sender = filePlatform(platformIn(folder), isBlind);
  const deps = { db, sender, random: () => 0, newMark: () => newMark(randomBytes), onDead: () => fail(new Error("a post was given up")), crash };
  try {
    const desk = rehearsalDesk(db, now, fail, crash);
    for (const step of drillScript) {
      await play(db, desk, folder, step);
      while ((await runOutboxOnce(deps, now)).waitingUntil !== null) {
        // what a pass leaves is due at once: this platform refuses nothing
      }
    }
  } finally {
    close();
  }
}
