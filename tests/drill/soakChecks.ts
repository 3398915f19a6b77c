import { asc } from "drizzle-orm";
import { benchPress, buildOrder } from "../../db/schema/orders.ts";
import { livePost, outbox } from "../../db/schema/plumbing.ts";
import type { Db } from "../../db/write.ts";
import { isAnswered } from "../support/platform/interactions.ts";
import type { Platform } from "../support/platform/platform.ts";
import type { Said } from "../support/platform/store.ts";
import { idOf } from "../support/platform/world.ts";

export interface SoakFigures {
  readonly orders: number;
  readonly confirmed: number;
  /** Those that went over the bench, to the final check. */
  readonly built: number;
  readonly posts: number;
  readonly interactions: number;
  readonly answeredByPost: number;
  readonly faults: readonly string[];
}

const refOf = ({ embeds }: Said): string => (embeds[0] as { footer?: { text?: string } } | undefined)?.footer?.text ?? "";

/** Everything that should hold when all has been said and sent: every order and every post once, in order, every press answered. */
export function soakFigures(db: Db, platform: Platform, said: readonly Said[], confirmedBy: ReadonlySet<string>): SoakFigures {
  const orders = db.select().from(buildOrder).all();
  // What the demo week posted before it came to this platform has no message here.
  const rows = db
    .select()
    .from(outbox)
    .orderBy(asc(outbox.id))
    .all()
    .filter(({ messageId }) => messageId === null || /^\d+$/.test(messageId));
  const atBench = db.select().from(benchPress).all();
  const lives = db.select().from(livePost).all();
  const own = platform.store.messages.filter(({ author }) => author === platform.world.bot);
  const byRef = grouped(own, refOf);
  const posts = new Map(rows.map((row) => [row.ref, row]));
  const ids = new Set(said.map(({ id }) => id));
  const isSaid = (key: string): boolean => ids.has(key.split(":")[1] ?? "");
  const isLate = (id: string): boolean => rows.some(({ dedupeKey, state }) => state === "sent" && new RegExp(`^answer:\\w+:${id}$`).test(dedupeKey));
  const saidOrders = orders.filter(({ sourceKey }) => isSaid(sourceKey));
  const late = platform.interactions.all.filter((one) => !isAnswered(one) && isLate(one.id));
  const lanes = grouped(
    rows.filter(({ state }) => state === "sent"),
    ({ channel }) => channel,
  );
  return {
    orders: saidOrders.length,
    confirmed: confirmedBy.size,
    built: saidOrders.filter(({ id }) => atBench.some(({ orderId, press }) => orderId === id && press === "done")).length,
    posts: own.length,
    interactions: platform.interactions.all.length,
    answeredByPost: late.length,
    faults: [
      ...rows.filter(({ state }) => state !== "sent").map(({ id, state, lastError }) => `post ${id} is ${state}: ${lastError}`),
      ...rows
        .filter(({ ref, state }) => state === "sent" && (byRef.get(ref)?.length ?? 0) !== 1)
        .map(({ id, ref }) => `post ${id} is there ${byRef.get(ref)?.length ?? 0} times`),
      ...saidOrders.filter(({ id }) => !lives.some(({ subject }) => subject === `order:${id}`)).map(({ id }) => `order ${id} has no post`),
      ...own.filter((message) => !posts.has(refOf(message))).map(({ id }) => `message ${id} was never planned`),
      ...lives
        .filter(({ wanted, shown: has, refused }) => has < wanted && refused !== wanted)
        .map(({ subject }) => `${subject} shows an older state`),
      ...[...lanes].flatMap(([channel, sent]) => outOfOrder(platform, channel, sent)),
      ...platform.interactions.all
        .filter((one) => !isAnswered(one) && !isLate(one.id))
        .map(({ id, first }) => `interaction ${id} got no answer (${first})`),
      ...[...confirmedBy]
        .filter((id) => !orders.some((order) => String(order.id) === id && order.state !== "draft"))
        .map((id) => `order ${id} was said to be confirmed and is not`),
      ...twice(orders.map(({ sourceKey }) => sourceKey)).map((key) => `${key} made two orders`),
      ...twice(atBench.filter(({ press }) => press === "start").map(({ orderId }) => `order ${orderId}`)).map(
        (order) => `${order} was started twice`,
      ),
      ...platform.complaints,
    ],
  };
}

function outOfOrder(
  platform: Platform,
  channel: string,
  sent: readonly { readonly id: number; readonly messageId: string | null }[],
): readonly string[] {
  const ids = sent.map(({ messageId }) => BigInt(messageId ?? 0));
  const at = ids.findIndex((id, index) => index > 0 && id < (ids[index - 1] ?? 0n));
  return at < 0 ? [] : [`${channel} (${idOf(platform.world.channels, channel)}): post ${sent[at]?.id} stands before the one planned earlier`];
}

const twice = (keys: readonly string[]): readonly string[] => keys.filter((key, index) => keys.indexOf(key) !== index);

function grouped<T>(rows: readonly T[], keyOf: (row: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  }
  return groups;
}
