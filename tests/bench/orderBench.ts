import { rmSync } from "node:fs";
import type { Desk } from "../../bot/chat/types.ts";
import { rehearsalClock, rehearsalDesk } from "../../bot/rehearsalBot.ts";
import { openDatabase } from "../../db/open.ts";
import { setMeta } from "../../db/repositories/meta.ts";
import { orderBySource } from "../../db/repositories/orders.ts";
import { allPlayers } from "../../db/repositories/people.ts";
import { type Db, write } from "../../db/write.ts";
import { MONDAY, migrationsFolder } from "../db/migrationsFolder.ts";
import { databaseIn, loadedFolder } from "../drill/drillFolder.ts";
import { drillChannel, drillSender } from "../drill/drillScript.ts";
import { addPastOrders } from "./pastOrders.ts";
import { printStartTimes } from "./startTimes.ts";
import { quantile, quantiles, timed } from "./timings.ts";

const PAST_ORDERS = 100_000;
const ORDERS = 50;

/** One post for each club of each player, all different, so that none is taken for the one before. */
function postsOf(db: Db): readonly string[] {
  const posts = allPlayers(db).flatMap(({ name }) => ["driver", "3w"].map((club) => `build ${name} ${club} like gamer\nby tue 12:00`));
  return posts.slice(0, ORDERS);
}

async function draft(db: Db, desk: Desk, message: string, text: string): Promise<number> {
  const arrival = { kind: "message", key: `message:${message}:0`, channel: drillChannel, sender: drillSender, message, text } as const;
  const ms = await timed(() => desk.receive(arrival));
  if (orderBySource(db, `message:${message}`) === null) {
    throw new Error(`no draft came of "${text}"`);
  }
  return ms;
}

/** Orders through the desk (read, plan, estimate, commit) and bare durable commits, turn about. */
async function printOrderTimes(db: Db): Promise<void> {
  const desk = rehearsalDesk(db, rehearsalClock(db).now, (error) => {
    throw error;
  });
  const posts = postsOf(db);
  const [orders, commits]: [number[], number[]] = [[], []];
  await draft(db, desk, "warm", `${posts[0]}, for backup`);
  for (const [at, text] of posts.entries()) {
    orders.push(await draft(db, desk, `b${at}`, text));
    commits.push(await timed(() => write(db, (tx) => setMeta(tx, "bench", String(at)))));
  }
  console.log(`${orders.length} orders through the desk: ${quantiles(orders)}`);
  console.log(`${commits.length} bare durable commits: ${quantiles(commits)}`);
  console.log(
    `ratio: p50 ${(quantile(orders, 0.5) / quantile(commits, 0.5)).toFixed(1)}, p95 ${(quantile(orders, 0.95) / quantile(commits, 0.95)).toFixed(1)}`,
  );
}

const folder = await loadedFolder();
try {
  const { db, close } = await openDatabase({ path: databaseIn(folder), create: false, now: MONDAY, migrationsFolder });
  try {
    const ms = await timed(() => addPastOrders(db, PAST_ORDERS, rehearsalClock(db).now()));
    console.log(`${PAST_ORDERS} past orders added in ${(ms / 1000).toFixed(1)} s`);
    await printOrderTimes(db);
  } finally {
    close();
  }
  await printStartTimes(folder, PAST_ORDERS);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
