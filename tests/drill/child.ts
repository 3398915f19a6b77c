import { randomBytes } from "node:crypto";
import { parseArgs } from "node:util";
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

/** A process of its own: plays the script to its end, or kills itself the given time it gets to the given point. */
const { values } = parseArgs({
  options: { folder: { type: "string" }, point: { type: "string" }, times: { type: "string" }, blind: { type: "boolean", default: false } },
});
const { folder = "", point = null, times = "1", blind } = values;
const platform = platformIn(folder);
const reached: Record<string, number> = {};

function crash(where: string): void {
  const count = (reached[where] ?? 0) + 1;
  reached[where] = count;
  if (where === point && count === Number(times)) {
    process.kill(process.pid, "SIGKILL");
  }
}

/** The Go of the first post that showed the order as a draft: what a rep with an old screen would press. */
function goOf(db: Db, message: string): Action {
  const row = orderBySource(db, `message:${message}`);
  const buttons = readLines<PlatformLine>(platform).flatMap(({ card }) => card.buttons);
  const found = buttons.find(({ label, action }) => label === "Go" && action.subject === `order:${row?.id}`);
  if (found === undefined) {
    throw new Error(`no post in the channel has a Go for ${message}`);
  }
  return found.action;
}

async function play(db: Db, desk: Desk, step: DrillStep): Promise<void> {
  const arrival = { key: step.key, channel: drillChannel, sender: drillSender };
  if (step.kind === "message") {
    await desk.receive({ ...arrival, kind: "message", message: step.message, text: step.text });
    return;
  }
  const answer = await desk.receive({ ...arrival, kind: "press", action: goOf(db, step.message), picked: [] });
  appendLine(answersIn(folder), { message: step.message, kind: answer?.kind === "card" ? answer.card.kind : null });
}

async function playAll(db: Db): Promise<void> {
  const clock = rehearsalClock(db);
  const fail = (error: unknown): never => {
    throw error;
  };
  const desk = rehearsalDesk(db, clock.now, fail, crash);
  const deps = {
    db,
    sender: filePlatform(platform, blind),
    random: () => 0,
    newMark: () => newMark(randomBytes),
    onDead: () => fail("given up"),
    crash,
  };
  for (const step of drillScript) {
    await play(db, desk, step);
    while ((await runOutboxOnce(deps, clock.now)).waitingUntil !== null) {
      // what a pass leaves is due at once: this platform refuses nothing
    }
  }
}

const opened = await openDatabase({ path: databaseIn(folder), create: false, now: MONDAY, migrationsFolder });
process.stdout.write("begun\n");
await playAll(opened.db);
opened.close();
process.stdout.write(`${JSON.stringify(reached)}\n`);
