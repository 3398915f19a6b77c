import { and, asc, desc, eq, gte, inArray, max, sql } from "drizzle-orm";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { buildOrder, orderRevision, type orderStates } from "../schema/orders.ts";
import { truck } from "../schema/people.ts";
import type { Reader, Tx } from "../write.ts";

export type OrderRow = typeof buildOrder.$inferSelect;
export type OrderState = (typeof orderStates)[number];

/** The states in which an order still has work or an answer owed. */
export const openStates: readonly OrderState[] = ["draft", "confirmed", "building", "finalCheck", "ready", "outWithPlayer"];
/** The states in which an order takes bench time. */
export const benchStates: readonly OrderState[] = ["confirmed", "building", "finalCheck"];

/** @returns the order, or null when there is none of that id */
export function orderById(reader: Reader, id: Id<"order">): OrderRow | null {
  return reader.select().from(buildOrder).where(eq(buildOrder.id, id)).get() ?? null;
}

/** Finds an order by the number people see: in the current event first, then in the newest older one. */
export function orderByNumber(reader: Reader, truckId: Id<"truck">, eventId: Id<"event"> | null, number: number): OrderRow | null {
  const rows = reader
    .select()
    .from(buildOrder)
    .where(and(eq(buildOrder.truckId, truckId), eq(buildOrder.number, number)))
    .orderBy(desc(buildOrder.createdAt))
    .limit(20)
    .all();
  return rows.find((row) => row.eventId === eventId) ?? rows[0] ?? null;
}

/** @returns the order that came from this message, or null */
export function orderBySource(reader: Reader, sourceKey: string): OrderRow | null {
  return reader.select().from(buildOrder).where(eq(buildOrder.sourceKey, sourceKey)).get() ?? null;
}

/** Lists a truck's orders in some states, oldest first. */
export function ordersIn(reader: Reader, truckId: Id<"truck">, states: readonly OrderState[]): readonly OrderRow[] {
  return reader
    .select()
    .from(buildOrder)
    .where(and(eq(buildOrder.truckId, truckId), inArray(buildOrder.state, [...states])))
    .orderBy(asc(buildOrder.id))
    .all();
}

/** Lists a player's open orders at any truck, newest first. */
export function openOrdersOf(reader: Reader, playerId: Id<"player">): readonly OrderRow[] {
  return reader
    .select()
    .from(buildOrder)
    .where(and(eq(buildOrder.playerId, playerId), inArray(buildOrder.state, [...openStates])))
    .orderBy(desc(buildOrder.id))
    .all();
}

/** Lists a player's orders made since a moment, to notice the same order twice. */
export function recentOrdersOf(reader: Reader, playerId: Id<"player">, since: Instant): readonly OrderRow[] {
  return reader
    .select()
    .from(buildOrder)
    .where(and(eq(buildOrder.playerId, playerId), gte(buildOrder.createdAt, since)))
    .orderBy(desc(buildOrder.id))
    .all();
}

/** Opens a draft with the next free number of the truck's event week, and its first revision. */
export function addDraft(
  tx: Tx,
  order: Omit<typeof buildOrder.$inferInsert, "id" | "number" | "state" | "version" | "revision" | "clubs" | "kind">,
  request: BuildRequest,
  asWritten: string,
): OrderRow {
  const scope = and(eq(buildOrder.truckId, order.truckId), eq(buildOrder.eventId, order.eventId));
  const highest =
    tx
      .select({ number: max(buildOrder.number) })
      .from(buildOrder)
      .where(scope)
      .get()?.number ?? 0;
  const row = tx
    .insert(buildOrder)
    .values({ ...order, number: highest + 1, kind: request.kind, clubs: JSON.stringify(request.clubs), state: "draft", version: 1, revision: 1 })
    .returning()
    .get();
  addRevision(tx, row, request, asWritten, order.postedById, order.createdAt);
  return row;
}

/** Adds a revision, the one before superseded. */
export function addRevision(tx: Tx, order: OrderRow, request: BuildRequest, asWritten: string, personId: Id<"person">, at: Instant): void {
  tx.update(orderRevision).set({ state: "superseded" }).where(eq(orderRevision.orderId, order.id)).run();
  const state = order.state === "draft" ? "draft" : "confirmed";
  tx.insert(orderRevision)
    .values({ orderId: order.id, revision: order.revision, asWritten, request: JSON.stringify(request), state, personId, at })
    .run();
}

/** Requests of earlier days name no clubs that leave the bag. */
type StoredRequest = Omit<BuildRequest, "out"> & Partial<Pick<BuildRequest, "out">>;

/** @returns the request of the order's newest revision with the words it was written in */
export function requestOf(reader: Reader, order: OrderRow): { readonly request: BuildRequest; readonly asWritten: string } {
  const row = reader
    .select()
    .from(orderRevision)
    .where(and(eq(orderRevision.orderId, order.id), eq(orderRevision.revision, order.revision)))
    .get();
  if (row === undefined) {
    throw new Error(`order ${order.id} has no revision ${order.revision}`);
  }
  return { request: { out: [], ...(JSON.parse(row.request) as StoredRequest) }, asWritten: row.asWritten };
}

/** Changes an order and counts its version up. */
export function changeOrder(tx: Tx, id: Id<"order">, change: Partial<Omit<OrderRow, "id" | "version">>): OrderRow {
  return tx
    .update(buildOrder)
    .set({ ...change, version: sql`${buildOrder.version} + 1` })
    .where(eq(buildOrder.id, id))
    .returning()
    .get();
}

/** Notes on an order what changes no card: a promise recomputed, a nudge sent. */
export function noteOnOrder(tx: Tx, id: Id<"order">, change: Partial<Omit<OrderRow, "id" | "version">>): void {
  tx.update(buildOrder).set(change).where(eq(buildOrder.id, id)).run();
}

/** Marks the order's newest revision as confirmed. */
export function confirmRevision(tx: Tx, order: OrderRow): void {
  tx.update(orderRevision)
    .set({ state: "confirmed" })
    .where(and(eq(orderRevision.orderId, order.id), eq(orderRevision.revision, order.revision)))
    .run();
}

/** Counts the version of a truck's bench up: estimates made before are old. */
export function touchBench(tx: Tx, truckId: Id<"truck">): void {
  tx.update(truck)
    .set({ benchVersion: sql`${truck.benchVersion} + 1` })
    .where(eq(truck.id, truckId))
    .run();
}

/** @returns the version of a truck's bench */
export function benchVersion(reader: Reader, truckId: Id<"truck">): number {
  return reader.select({ version: truck.benchVersion }).from(truck).where(eq(truck.id, truckId)).get()?.version ?? 0;
}
