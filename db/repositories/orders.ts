import { and, asc, desc, eq, gte, inArray, max, sql } from "drizzle-orm";
import type { FinishedClub } from "../../core/bag/finishedClub.ts";
import type { SpecClub } from "../../core/bag/specClub.ts";
import type { RouteStep } from "../../core/bench/benchTypes.ts";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { ServicePlan } from "../../core/buildSheet/servicePlan.ts";
import type { ClubName, Id, Instant } from "../../core/kinds.ts";
import { buildOrder, keptPost, measurement, orderRevision, type orderStates, sheet, step } from "../schema/orders.ts";
import { truck } from "../schema/people.ts";
import type { Reader, Tx } from "../write.ts";

export type OrderRow = typeof buildOrder.$inferSelect;
export type OrderState = (typeof orderStates)[number];
export type StepRow = Omit<typeof step.$inferSelect, "route"> & { readonly route: RouteStep };
/** Another plan for a confirmed sheet of another order, good while that order is as it was. */
export interface SheetMove {
  readonly order: Id<"order">;
  readonly number: number;
  readonly version: number;
  readonly sheet: Id<"sheet">;
  readonly plan: ClubPlan;
}

/** A sheet as kept: the route and its floors, and what is built from parts or done to a club that exists. */
export interface SheetPlan {
  readonly version: 1;
  readonly plan: ClubPlan | null;
  /** Left out on sheets written before there were any. */
  readonly service?: ServicePlan | null;
  /** The club it leans on or works on, as it was on record when the sheet was made. */
  readonly reference?: SpecClub | null;
  /** The finished club offered for one that broke. */
  readonly finished?: FinishedClub | null;
  /** A nearer head that goes to another open order, as all heads are allotted together. */
  readonly yields?: { readonly serial: string; readonly toOrder: number } | null;
  /** Confirmed sheets that take another head, no further from what was written, when this order is confirmed. */
  readonly moves?: readonly SheetMove[];
  readonly playableAfterBondMin: number;
  readonly playableAfterGripMin: number;
}
export interface SheetRow {
  readonly id: Id<"sheet">;
  readonly club: ClubName;
  /** Which of several alike, from 1. */
  readonly copy: number;
  readonly sheetPlan: SheetPlan;
  readonly steps: readonly StepRow[];
}

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

const requestsOfOldHad = { out: [] } as const;

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
  /** What requests did not say before there were set changes is filled in. */
  const request: BuildRequest = { ...requestsOfOldHad, ...(JSON.parse(row.request) as BuildRequest) };
  return { request, asWritten: row.asWritten };
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

/** Adds the sheet of one club with its route as steps to do. */
export function addSheet(
  tx: Tx,
  order: OrderRow,
  { club, copy }: { readonly club: ClubName; readonly copy: number },
  plan: SheetPlan,
  steps: readonly RouteStep[],
): Id<"sheet"> {
  const { id } = tx
    .insert(sheet)
    .values({ orderId: order.id, revision: order.revision, club, copy, plan: JSON.stringify(plan) })
    .returning({ id: sheet.id })
    .get();
  steps.forEach((route, position) => {
    tx.insert(step)
      .values({ sheetId: id, position, kind: route.kind, route: JSON.stringify(route), state: "todo" })
      .run();
  });
  return id;
}

/** Lists the sheets of the order's newest revision with their steps in order. */
export function sheetsOf(reader: Reader, order: OrderRow): readonly SheetRow[] {
  return reader
    .select()
    .from(sheet)
    .where(and(eq(sheet.orderId, order.id), eq(sheet.revision, order.revision)))
    .orderBy(asc(sheet.id))
    .all()
    .map((row) => ({
      id: row.id,
      club: row.club as ClubName,
      copy: row.copy,
      sheetPlan: readSheetPlan(row.plan, order.kind),
      steps: stepsOf(reader, row.id),
    }));
}

/** A plan as stored; what plans did not say before they could be of every kind is filled in. */
function readSheetPlan(stored: string, kind: OrderRow["kind"]): SheetPlan {
  const sheetPlan = JSON.parse(stored) as SheetPlan;
  const { plan } = sheetPlan;
  return plan === null ? sheetPlan : { ...sheetPlan, plan: Object.assign({ ...plansOfOldHad, kind: kind === "swap" ? "swap" : "build" }, plan) };
}

const plansOfOldHad = { piece: null, gripMisfit: null, elsewhere: [], remedies: [] } as const;

function stepsOf(reader: Reader, sheetId: Id<"sheet">): readonly StepRow[] {
  return reader
    .select()
    .from(step)
    .where(eq(step.sheetId, sheetId))
    .orderBy(asc(step.position))
    .all()
    .map((row) => ({ ...row, route: JSON.parse(row.route) as RouteStep }));
}

/** Changes one step. */
export function changeStep(tx: Tx, id: Id<"step">, change: Partial<Omit<typeof step.$inferInsert, "id" | "route">>): void {
  tx.update(step).set(change).where(eq(step.id, id)).run();
}

/** Replaces what a sheet is built from: its steps and what it holds are the caller's to keep in step. */
export function changeSheetPlan(tx: Tx, id: Id<"sheet">, plan: SheetPlan): void {
  tx.update(sheet)
    .set({ plan: JSON.stringify(plan) })
    .where(eq(sheet.id, id))
    .run();
}

/** Moves the sheets of an order to its newest revision: what was built stays, the request changed. */
export function carrySheets(tx: Tx, orderId: Id<"order">, from: number, to: number): void {
  tx.update(sheet)
    .set({ revision: to })
    .where(and(eq(sheet.orderId, orderId), eq(sheet.revision, from)))
    .run();
}

/** Keeps what the gauge said. */
export function addMeasurement(tx: Tx, row: typeof measurement.$inferInsert): void {
  tx.insert(measurement).values(row).run();
}

/** Reads the newest measurement of each quantity of a sheet's club, as left unless as found is asked for. */
export function measuredOf(reader: Reader, sheetId: Id<"sheet">, stage: "found" | "left" = "left") {
  const rows = reader
    .select()
    .from(measurement)
    .where(and(eq(measurement.sheetId, sheetId), eq(measurement.stage, stage)))
    .orderBy(asc(measurement.id))
    .all();
  return [...new Map(rows.map((row) => [row.quantity, row])).values()];
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

/** Keeps a post with faults whole, so that a press can mend a word of it. */
export function keepPost(tx: Tx, row: Omit<typeof keptPost.$inferInsert, "id" | "version">): Id<"keptPost"> {
  return tx
    .insert(keptPost)
    .values({ ...row, version: 1 })
    .onConflictDoUpdate({ target: keptPost.sourceKey, set: { text: row.text, version: sql`${keptPost.version} + 1` } })
    .returning({ id: keptPost.id })
    .get().id;
}

/** @returns the kept post, or null */
export function keptPostById(reader: Reader, id: Id<"keptPost">) {
  return reader.select().from(keptPost).where(eq(keptPost.id, id)).get() ?? null;
}
