import type { Instant } from "../../core/kinds.ts";
import { livePostsBehind, putOffEdit } from "../../db/repositories/livePosts.ts";
import { markLater, newestPost, nextPost, pendingChannels } from "../../db/repositories/outbox.ts";
import { type Db, write } from "../../db/write.ts";
import { clampWait } from "./backOff.ts";
import type { OutboxDeps, OutboxWork } from "./outboxDeps.ts";
import { type Step, sendPost } from "./sendPost.ts";
import { syncLivePost } from "./syncLivePost.ts";

export interface OutboxPass {
  /** Posts and edits that reached their channel. */
  readonly sent: number;
  /** When there is something to do again; null when nothing waits. */
  readonly waitingUntil: Instant | null;
  /** Why nothing will be taken any more: the platform does not let the bot in. */
  readonly stopped: string | null;
}

interface Pass extends OutboxWork {
  /** Posts planned after the pass began are for the next one. */
  readonly newest: number;
  readonly tally: { sent: number; stopped: string | null };
}

const underWay = new WeakMap<Db, Promise<OutboxPass>>();

/**
 * Sends what is due, each channel in its own order and none waiting for another, then brings live posts up to date.
 *
 * No timer inside: the caller calls again at `waitingUntil`, and whenever something new is planned. A call during a
 * pass joins that pass, so that no post is tried twice at once.
 */
export function runOutboxOnce(deps: OutboxDeps, now: () => Instant): Promise<OutboxPass> {
  const running = underWay.get(deps.db);
  if (running !== undefined) {
    return running;
  }
  const pass = runPass({ ...deps, now }).finally(() => underWay.delete(deps.db));
  underWay.set(deps.db, pass);
  return pass;
}

async function runPass(deps: OutboxWork): Promise<OutboxPass> {
  const pass: Pass = { ...deps, newest: newestPost(deps.db), tally: { sent: 0, stopped: null } };
  const behind = livePostsBehind(deps.db, null).map(({ channel }) => channel);
  const channels = [...new Set([...pendingChannels(deps.db), ...behind])];
  const lanes = await Promise.allSettled(channels.map((channel) => runLane(pass, channel)));
  const bug = lanes.find((lane) => lane.status === "rejected");
  if (bug !== undefined) {
    throw bug.reason;
  }
  return { ...pass.tally, waitingUntil: pass.tally.stopped === null ? waitingUntil(deps.db) : null };
}

async function runLane(pass: Pass, channel: string): Promise<void> {
  await sendLane(pass, channel);
  await syncLane(pass, channel);
}

async function sendLane(pass: Pass, channel: string): Promise<void> {
  while (pass.tally.stopped === null) {
    const post = nextPost(pass.db, channel);
    if (post === null || post.id > pass.newest) {
      return;
    }
    const now = pass.now();
    const nextAt = clampWait(now, post.nextAt, post.firstTryAt === null);
    if (nextAt !== post.nextAt) {
      write(pass.db, (tx) => markLater(tx, post.id, nextAt, null));
    }
    if (nextAt > now || note(pass, await sendPost(pass, post)) === "waits") {
      return;
    }
  }
}

async function syncLane(pass: Pass, channel: string): Promise<void> {
  const seen = new Set<string>();
  while (pass.tally.stopped === null) {
    const live = livePostsBehind(pass.db, channel).find(({ subject }) => !seen.has(subject));
    if (live === undefined) {
      return;
    }
    seen.add(live.subject);
    const now = pass.now();
    const nextAt = clampWait(now, live.nextAt, live.attempts === 0);
    if (nextAt !== live.nextAt) {
      write(pass.db, (tx) => putOffEdit(tx, live, nextAt, null));
    }
    if (nextAt <= now) {
      note(pass, await syncLivePost(pass, live));
    }
  }
}

function note({ tally }: Pass, step: Step): Step["kind"] {
  if (step.kind === "sent") {
    tally.sent += 1;
  }
  if (step.kind === "stop") {
    tally.stopped = step.reason;
  }
  return step.kind;
}

function waitingUntil(db: Db): Instant | null {
  const posts = pendingChannels(db).flatMap((channel) => nextPost(db, channel)?.nextAt ?? []);
  const edits = livePostsBehind(db, null).map(({ nextAt }) => nextAt);
  return [...posts, ...edits].reduce<Instant | null>((first, at) => (first === null || at < first ? at : first), null);
}
