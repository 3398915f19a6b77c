import { randomBytes } from "node:crypto";
import { type Instant, instant } from "../core/kinds.ts";
import { findLivePost } from "../db/repositories/livePosts.ts";
import { metaValue, setMeta } from "../db/repositories/meta.ts";
import { orderByNumber } from "../db/repositories/orders.ts";
import { findPost, findPostByRef } from "../db/repositories/outbox.ts";
import { allChannels, channelByName, currentEvent, identitiesOf } from "../db/repositories/people.ts";
import { type Db, write } from "../db/write.ts";
import type { Card, Desk, Sender } from "./chat/types.ts";
import { WEEK_PLATFORM } from "./chat/weekPlatform.ts";
import { dueIn, postAll } from "./chores.ts";
import { rolesByName } from "./desk/actorOf.ts";
import { makeDesk } from "./desk/desk.ts";
import type { DeskParts } from "./desk/deskParts.ts";
import { newMark } from "./outbox/newMark.ts";
import { commands } from "./registry.ts";
import type { PostName, RehearsalPost, RehearsalWorld } from "./rehearsal/rehearsalWorld.ts";
import type { Screen } from "./rehearsal/screen.ts";
import { nextDue } from "./reminders/tick.ts";

const CLOCK = "rehearsal.now";
const KEYS = "rehearsal.keys";
const SEED = 20270503;

/** The clock of a rehearsal: it stands still, and is kept in the database. */
export function rehearsalClock(db: Db): { readonly now: () => Instant; readonly moveTo: (at: Instant) => void } {
  return {
    now: () => instant(Number(metaValue(db, CLOCK) ?? 0)),
    moveTo: (at) => write(db, (tx) => setMeta(tx, CLOCK, String(at))),
  };
}

/** A number never given before, whatever was restarted in between. */
function nextKey(db: Db): string {
  return write(db, (tx) => {
    const next = Number(metaValue(tx, KEYS) ?? 0) + 1;
    setMeta(tx, KEYS, String(next));
    return `r${next}`;
  });
}

export function rehearsalDesk(db: Db, now: () => Instant, log: DeskParts["log"], crash?: DeskParts["crash"]): Desk {
  return makeDesk({
    db,
    commands,
    now,
    newMark: () => newMark(randomBytes),
    rolesOf: rolesByName,
    seed: SEED,
    log,
    ...(crash === undefined ? {} : { crash }),
  });
}

function postNamed(db: Db, name: PostName, channel: string, now: Instant): RehearsalPost | null {
  if (name.kind === "ref") {
    const row = findPostByRef(db, name.ref);
    return row === null ? null : { id: row.ref, channel: row.channel, card: JSON.parse(row.card) as Card };
  }
  const truckId = channelByName(db, channel)?.truckId ?? null;
  const order = truckId === null ? null : orderByNumber(db, truckId, currentEvent(db, truckId, now)?.event.id ?? null, name.number);
  if (order === null) {
    return null;
  }
  const bench = channelByName(db, channel)?.purpose === "bench";
  const live = findLivePost(db, { subject: bench ? `sheet:${order.id}` : `order:${order.id}`, channel: bench ? channel : order.channel });
  const post = live === null ? null : findPost(db, live.outboxId);
  return live === null || post === null ? null : { id: post.ref, channel: live.channel, card: JSON.parse(live.card) as Card };
}

/** Everything due now: reminders, then the outbox until nothing more can leave. */
export async function settle(db: Db, now: () => Instant, sender: Sender): Promise<void> {
  await dueIn(db, SEED, now);
  await postAll({ db, sender }, now);
}

/** Joins a database and a screen to the world a rehearsal plays in. */
export function rehearsalWorld(db: Db, screen: Screen, log: DeskParts["log"]): RehearsalWorld {
  const clock = rehearsalClock(db);
  const zoneOf = (channel: string): string => {
    const truckId = channelByName(db, channel)?.truckId ?? null;
    return (truckId === null ? null : currentEvent(db, truckId, clock.now())?.event.zone) ?? "UTC";
  };
  return {
    desk: rehearsalDesk(db, clock.now, log),
    people: new Map(
      identitiesOf(db, WEEK_PLATFORM).map((row) => [
        row.platformUserId,
        { platformId: row.platformUserId, roleIds: JSON.parse(row.rehearsalRoles) as string[], name: row.name ?? "erased", zone: row.zone },
      ]),
    ),
    channels: allChannels(db).map(({ name }) => name),
    zoneOf,
    clock,
    nextDueAt: (limit) => nextDue({ db }, clock.now(), limit),
    settle: () => settle(db, clock.now, screen.sender),
    newKey: () => nextKey(db),
    commandOptions: (name) => commands.find((command) => command.name === name)?.options ?? null,
    findPost: (name, channel) => postNamed(db, name, channel, clock.now()),
  };
}
