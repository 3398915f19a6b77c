import type { CrashPoint, DeadPost, OutboxDeps } from "../../../bot/outbox/outboxDeps.ts";
import { type OutboxPass, runOutboxOnce } from "../../../bot/outbox/outboxLoop.ts";
import { instant } from "../../../core/kinds.ts";
import { openMemory } from "../../../db/open.ts";
import { wantLivePost } from "../../../db/repositories/livePosts.ts";
import { enqueuePost } from "../../../db/repositories/outbox.ts";
import { write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../../db/migrationsFolder.ts";
import { cardOf } from "./cardOf.ts";
import { FakePlatform } from "./fakePlatform.ts";

/** A process that was killed, as far as this process can play it. */
export class Killed extends Error {}

/** An outbox over a database in memory and a fake platform, with a virtual clock. */
export function outboxBench() {
  const { db, close } = openMemory({ migrationsFolder });
  const platform = new FakePlatform(MONDAY);
  const dead: DeadPost[] = [];
  const world: { marks: number; random: () => number; crash: (point: CrashPoint) => void } = { marks: 0, random: () => 0.5, crash: () => undefined };
  const newMark = () => {
    world.marks += 1;
    return { nonce: `nonce-${world.marks}`, ref: `ref${world.marks}` };
  };
  const deps: OutboxDeps = {
    db,
    sender: platform,
    random: () => world.random(),
    newMark,
    onDead: (_tx, each) => dead.push(each),
    crash: (point) => world.crash(point),
  };
  const run = (): Promise<OutboxPass> => runOutboxOnce(deps, () => platform.now);
  const post = (channel: string, title: string) =>
    write(db, (tx) => enqueuePost(tx, { ...newMark(), channel, dedupeKey: title, card: cardOf(title), at: platform.now }).id);
  const want = (subject: string, channel: string, title: string) =>
    write(db, (tx) => wantLivePost(tx, { ...newMark(), subject, channel, card: cardOf(title), at: platform.now }));

  /** Runs until nothing waits, the clock jumping to the next thing due; a killed process starts again. */
  async function drain(): Promise<void> {
    for (let pass = 0; pass < 2000; pass += 1) {
      const done = await run().catch((error: unknown) => {
        if (error instanceof Killed) {
          return null;
        }
        throw error;
      });
      if (done !== null && done.waitingUntil === null) {
        return;
      }
      platform.passUntil(done?.waitingUntil ?? platform.now);
    }
    throw new Error("the outbox never came to rest");
  }
  const titles = (channel: string) => platform.messages.filter((each) => each.channel === channel).map((each) => each.card.title);
  const passMs = (ms: number) => platform.passUntil(instant(platform.now + ms));
  return { db, close, platform, dead, world, deps, run, post, want, drain, titles, passMs };
}
