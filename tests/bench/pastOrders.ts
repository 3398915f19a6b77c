import { eq, sql } from "drizzle-orm";
import type { Instant } from "../../core/kinds.ts";
import { instant } from "../../core/kinds.ts";
import { appendAudit } from "../../db/repositories/audit.ts";
import { insertInbound } from "../../db/repositories/inbound.ts";
import { buildOrder, orderRevision } from "../../db/schema/orders.ts";
import { event, person, player, truck } from "../../db/schema/people.ts";
import { type Db, type Tx, write } from "../../db/write.ts";

const MINUTE_MS = 60_000;

type Pick = <T>(rows: readonly T[], at: number) => T;

const pick: Pick = (rows, at) => {
  const found = rows[at % rows.length];
  if (found === undefined) {
    throw new Error("the week has no truck, player or person");
  }
  return found;
};

function addPast(tx: Tx, at: number, ids: ReturnType<typeof idsOf>, createdAt: Instant): void {
  const [playerId, personId] = [pick(ids.players, at), pick(ids.people, at)];
  const { id } = tx
    .insert(buildOrder)
    .values({
      number: Math.floor(at / ids.trucks.length) + 1000,
      truckId: pick(ids.trucks, at),
      eventId: ids.pastEvent,
      playerId,
      postedById: personId,
      sourceKey: `message:past${at}`,
      channel: "plover-orders",
      kind: "build",
      clubs: '["driver"]',
      state: "closed",
      version: 9,
      revision: 1,
      urgent: false,
      createdAt,
    })
    .returning({ id: buildOrder.id })
    .get();
  const common = { orderId: id, revision: 1, asWritten: "build driver like gamer", state: "confirmed", personId, at: createdAt } as const;
  tx.insert(orderRevision)
    .values({ ...common, request: JSON.stringify({ kind: "build", player: playerId, clubs: ["driver"] }) })
    .run();
  insertInbound(tx, { key: `message:past${at}:0`, at: createdAt, personId, reply: null });
  appendAudit(tx, { at: createdAt, personId, action: "order.draft", subject: `order:${id}`, body: { before: null, after: "draft" }, playerId });
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
  const ids = idsOf(db);
  write(db, (tx) => {
    for (let at = 0; at < count; at += 1) {
      addPast(tx, at, ids, instant(now - (count - at) * MINUTE_MS - 24 * 60 * MINUTE_MS));
    }
  });
}

export function closedOrders(db: Db): number {
  return (
    db
      .select({ count: sql<number>`count(*)` })
      .from(buildOrder)
      .where(eq(buildOrder.state, "closed"))
      .get()?.count ?? 0
  );
}
