import { randomBytes } from "node:crypto";
import type { Instant } from "../core/kinds.ts";
import { enqueuePost } from "../db/repositories/outbox.ts";
import { allChannels } from "../db/repositories/people.ts";
import type { Db, Tx } from "../db/write.ts";
import { newMark } from "./outbox/newMark.ts";
import type { DeadPost, OutboxDeps } from "./outbox/outboxDeps.ts";
import { runOutboxOnce } from "./outbox/outboxLoop.ts";
import { dueNow } from "./reminders/dueNow.ts";
import { deadPostCard } from "./replies/deadPostCard.ts";

const MOST_PASSES = 50;

/** What the clock owes, and new times for benches that changed. */
export function dueIn(db: Db, seed: number, now: () => Instant): Promise<void> {
  return dueNow({ db, newMark: () => newMark(randomBytes), seed }, now);
}

/** Posts what waits until nothing more can leave; tells when to come again, null when nothing waits. */
export async function postAll(parts: Pick<OutboxDeps, "db" | "sender" | "crash">, now: () => Instant): Promise<Instant | null> {
  const deps: OutboxDeps = {
    ...parts,
    random: Math.random,
    newMark: () => newMark(randomBytes),
    onDead: (tx, dead) => reportDead(tx, dead, now()),
  };
  let waitingUntil: Instant | null = null;
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const done = await runOutboxOnce(deps, now);
    waitingUntil = done.waitingUntil;
    if (done.sent === 0) {
      break;
    }
  }
  return waitingUntil;
}

/** A post that was given up is told to the lead, where the lead can be reached. */
function reportDead(tx: Tx, dead: DeadPost, at: Instant): void {
  const lead = allChannels(tx).find(({ purpose }) => purpose === "lead")?.name;
  if (lead !== undefined && lead !== dead.channel) {
    enqueuePost(tx, { channel: lead, dedupeKey: `dead:${dead.outboxId}:${dead.ref}`, card: deadPostCard(dead), at, ...newMark(randomBytes) });
  }
}
