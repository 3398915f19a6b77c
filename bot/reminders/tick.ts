import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { claimDue } from "../../db/repositories/due.ts";
import { benchStates, noteOnOrder, type OrderRow, ordersIn } from "../../db/repositories/orders.ts";
import { enqueuePost, isPlanned, type PostMark } from "../../db/repositories/outbox.ts";
import { allTrucks, currentEvent, truckChannel } from "../../db/repositories/people.ts";
import { type Db, write } from "../../db/write.ts";
import type { Card } from "../chat/types.ts";
import { LOOK_AGAIN_MS } from "../flows/reestimate.ts";
import { fillFacts } from "../operations/fillFacts.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { owedFacts } from "../operations/owedFacts.ts";
import { keepPosts } from "../outbox/keepPosts.ts";
import { askBagCard, nudgeCard, readyCallCard } from "../replies/callCards.ts";
import { fillCard } from "../replies/fillCard.ts";
import { owedCard } from "../replies/owedCard.ts";
import { type LocalMoment, localTime } from "./localMoment.ts";

export interface TickParts {
  readonly db: Db;
  readonly newMark: () => PostMark;
  readonly seed: number;
}

const MS_PER_MIN = 60_000;
const NUDGE_AFTER_MS = 3 * MS_PER_MIN;
const STALE_HOURS = 12;

/** Everything the clock owes at a moment: reminders and nudges; each planned with the post it causes. */
export function tick(parts: TickParts, now: Instant): void {
  for (const { id: truckId } of allTrucks(parts.db)) {
    const current = currentEvent(parts.db, truckId, now);
    if (current !== null) {
      const local = localTime(now, current.event.zone);
      mondayFill(parts, truckId, now, local);
      owedBeforePractice(parts, truckId, now, local);
      nudges(parts, truckId, now);
      askWhetherInTheBag(parts, truckId, now, local);
    }
  }
}

type Remind = {
  readonly truckId: Id<"truck">;
  readonly reminder: string;
  readonly localDate: string;
  readonly purpose: "week" | "orders";
  readonly stale: boolean;
};

/** One post a reminder and local day; too old ones are recorded as skipped. */
function remindOnce(parts: TickParts, now: Instant, remind: Remind, draw: (tx: Parameters<Parameters<typeof write>[1]>[0]) => Card): void {
  const channel = truckChannel(parts.db, remind.truckId, remind.purpose);
  if (channel === null) {
    return;
  }
  write(parts.db, (tx) => {
    const name = `${remind.reminder}:${remind.truckId}`;
    if (claimDue(tx, name, remind.localDate, remind.stale ? "skipped" : "posted") && !remind.stale) {
      enqueuePost(tx, { channel, dedupeKey: `due:${name}:${remind.localDate}`, card: draw(tx), at: now, ...parts.newMark() });
    }
  });
}

const FILL_HOUR = 7;

function mondayFill(parts: TickParts, truckId: Id<"truck">, now: Instant, local: LocalMoment): void {
  const current = currentEvent(parts.db, truckId, now);
  if (current === null || local.date !== current.event.monday || local.hour < FILL_HOUR) {
    return;
  }
  const stale = local.hour >= FILL_HOUR + STALE_HOURS;
  remindOnce(parts, now, { truckId, reminder: "fill", localDate: local.date, purpose: "week", stale }, (tx) =>
    fillCard(fillFacts(tx, truckId, current.event.id), current.event.name),
  );
}

/** On the day before the first practice round, from the same hour. */
function owedBeforePractice(parts: TickParts, truckId: Id<"truck">, now: Instant, local: LocalMoment): void {
  const current = currentEvent(parts.db, truckId, now);
  if (current === null || local.tomorrow !== current.event.firstPracticeRound || local.hour < FILL_HOUR) {
    return;
  }
  const owed = owedFacts(parts.db, current.event.id);
  if (owed.length > 0) {
    const stale = local.hour >= FILL_HOUR + STALE_HOURS;
    remindOnce(parts, now, { truckId, reminder: "owed", localDate: local.date, purpose: "week", stale }, () => owedCard(owed));
  }
}

function callRep(parts: TickParts, order: OrderRow, now: Instant, key: string, card: Card, change: Partial<OrderRow>): void {
  write(parts.db, (tx) => {
    if (Object.keys(change).length > 0) {
      noteOnOrder(tx, order.id, change);
    }
    keepPosts(tx, [{ channel: order.channel, key, card }], now, parts.newMark);
  });
}

/** A draft left alone is nudged once. */
function nudges(parts: TickParts, truckId: Id<"truck">, now: Instant): void {
  for (const order of ordersIn(parts.db, truckId, ["draft"])) {
    if (order.nudgedAt === null && now - order.createdAt >= NUDGE_AFTER_MS) {
      callRep(parts, order, now, `nudge:${order.id}`, nudgeCard(orderFacts(parts.db, order, now)), { nudgedAt: now });
    }
  }
  for (const order of ordersIn(parts.db, truckId, ["ready"])) {
    const key = `ready:${order.id}:${order.revision}`;
    if (!isPlanned(parts.db, key)) {
      callRep(parts, order, now, key, readyCallCard(orderFacts(parts.db, order, now)), {});
    }
  }
}

const EVENING_HOUR = 18;

/** A club that is out is asked after in the evening, once a day. */
function askWhetherInTheBag(parts: TickParts, truckId: Id<"truck">, now: Instant, local: LocalMoment): void {
  if (local.hour < EVENING_HOUR) {
    return;
  }
  for (const order of ordersIn(parts.db, truckId, ["outWithPlayer"])) {
    write(parts.db, (tx) => {
      if (claimDue(tx, `bag:${order.id}`, local.date)) {
        enqueuePost(tx, {
          channel: order.channel,
          dedupeKey: `bag:${order.id}:${local.date}`,
          card: askBagCard(orderFacts(tx, order, now)),
          at: now,
          ...parts.newMark(),
        });
      }
    });
  }
}

/**
 * The first moment after now at which the clock owes something: a nudge, a reminder's hour, a slip's next look.
 *
 * @param limit - look no further
 */
export function nextDue(parts: Pick<TickParts, "db">, now: Instant, limit: Instant): Instant | null {
  const moments = allTrucks(parts.db).flatMap(({ id: truckId }) => {
    const drafts = ordersIn(parts.db, truckId, ["draft"]).flatMap((order) => (order.nudgedAt === null ? [order.createdAt + NUDGE_AFTER_MS] : []));
    const benchRuns = ordersIn(parts.db, truckId, benchStates).length > 0 ? [now + LOOK_AGAIN_MS] : [];
    const zone = currentEvent(parts.db, truckId, now)?.event.zone;
    return [...drafts, ...benchRuns, ...(zone === undefined ? [] : [localTime(now, zone).nextHourAt])];
  });
  const next = moments.filter((at) => at > now).reduce((first, at) => Math.min(first, at), Number.POSITIVE_INFINITY);
  return next <= limit ? instant(next) : null;
}
