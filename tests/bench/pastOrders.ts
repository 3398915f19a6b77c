import { max } from "drizzle-orm";
import { type Instant, id, instant } from "../../core/kinds.ts";
import { appendAudit } from "../../db/repositories/audit.ts";
import { buildOrder, orderRevision } from "../../db/schema/orders.ts";
import { event, person, player, truck } from "../../db/schema/people.ts";
import { inbound } from "../../db/schema/plumbing.ts";
import { type Db, type Tx, write } from "../../db/write.ts";

const MINUTE_MS = 60_000;
const CHUNK = 500;

interface Past {
  readonly ids: ReturnType<typeof idsOf>;
  readonly firstId: number;
  readonly at: (index: number) => Instant;
}

function pick<T>(rows: readonly T[], at: number): T {
  const found = rows[at % rows.length];
  if (found === undefined) {
    throw new Error("the week has no truck, player or person");
  }
  return found;
}

/** Some orders at once, their ids counted on from the ones before. */
function addChunk(tx: Tx, from: number, until: number, { ids, firstId, at }: Past): void {
  const rows = Array.from({ length: until - from }, (_, offset) => {
    const index = from + offset;
    return { id: id<"order">(firstId + index), index, playerId: pick(ids.players, index), personId: pick(ids.people, index), at: at(index) };
  });
  const kept = {
    eventId: ids.pastEvent,
    channel: "plover-orders",
    kind: "build",
    clubs: '["driver"]',
    state: "closed",
    version: 9,
    revision: 1,
  } as const;
  tx.insert(buildOrder)
    .values(
      rows.map((row) => ({
        ...kept,
        id: row.id,
        number: 1000 + row.index,
        truckId: pick(ids.trucks, row.index),
        playerId: row.playerId,
        postedById: row.personId,
        sourceKey: `message:past${row.index}`,
        urgent: false,
        createdAt: row.at,
      })),
    )
    .run();
  const revision = { revision: 1, asWritten: "build driver like gamer", state: "confirmed" } as const;
  tx.insert(orderRevision)
    .values(
      rows.map((row) => ({ ...revision, orderId: row.id, personId: row.personId, at: row.at, request: JSON.stringify({ player: row.playerId }) })),
    )
    .run();
  tx.insert(inbound)
    .values(rows.map((row) => ({ key: `message:past${row.index}:0`, at: row.at, personId: row.personId, reply: "null" })))
    .run();
  for (const row of rows) {
    const body = { before: null, after: "draft" };
    appendAudit(tx, { at: row.at, personId: row.personId, action: "order.draft", subject: `order:${row.id}`, body, playerId: row.playerId });
  }
}

function idsOf(db: Db) {
  const ids = <T>(rows: readonly { readonly id: T }[]): readonly T[] => rows.map(({ id }) => id);
  const [past] = db.select({ id: event.id }).from(event).orderBy(event.monday).limit(1).all();
  if (past === undefined) {
    throw new Error("the week has no event");
  }
  return {
    trucks: ids(db.select({ id: truck.id }).from(truck).all()),
    players: ids(db.select({ id: player.id }).from(player).all()),
    people: ids(db.select({ id: person.id }).from(person).all()),
    pastEvent: past.id,
  };
}

/** Adds closed orders of an earlier week, each with its revision, its key and an entry of the audit, in one transaction. */
export function addPastOrders(db: Db, count: number, now: Instant): void {
  const highest =
    db
      .select({ id: max(buildOrder.id) })
      .from(buildOrder)
      .get()?.id ?? 0;
  const at = (index: number): Instant => instant(now - (count - index) * MINUTE_MS - 24 * 60 * MINUTE_MS);
  const past = { ids: idsOf(db), firstId: highest + 1, at };
  write(db, (tx) => {
    for (let from = 0; from < count; from += CHUNK) {
      addChunk(tx, from, Math.min(from + CHUNK, count), past);
    }
  });
}
