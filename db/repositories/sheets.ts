import { and, asc, eq, inArray } from "drizzle-orm";
import type { RouteStep } from "../../core/bench/benchTypes.ts";
import type { ClubName, Id, Instant } from "../../core/kinds.ts";
import { sheet, step } from "../schema/orders.ts";
import type { Reader, Tx } from "../write.ts";
import type { OrderRow } from "./orders.ts";
import { readSheetPlan, type SheetPlan } from "./sheetPlan.ts";

export type StepRow = Omit<typeof step.$inferSelect, "route"> & { readonly route: RouteStep };

export interface SheetRow {
  readonly id: Id<"sheet">;
  readonly club: ClubName;
  /** Which of several alike, from 1. */
  readonly copy: number;
  readonly sheetPlan: SheetPlan;
  /** When this club is likely in hand; null before it was estimated. */
  readonly likelyAt: Instant | null;
  readonly steps: readonly StepRow[];
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
  const rows = reader
    .select()
    .from(sheet)
    .where(and(eq(sheet.orderId, order.id), eq(sheet.revision, order.revision)))
    .orderBy(asc(sheet.id))
    .all();
  const steps = stepsOf(
    reader,
    rows.map(({ id }) => id),
  );
  return rows.map(({ id, club, copy, plan, likelyAt }) => ({
    id,
    club: club as ClubName,
    copy,
    sheetPlan: readSheetPlan(plan, order.kind),
    likelyAt,
    steps: steps.filter(({ sheetId }) => sheetId === id),
  }));
}

function stepsOf(reader: Reader, sheets: readonly Id<"sheet">[]): readonly StepRow[] {
  return reader
    .select()
    .from(step)
    .where(inArray(step.sheetId, [...sheets]))
    .orderBy(asc(step.position))
    .all()
    .map((row) => ({ ...row, route: JSON.parse(row.route) as RouteStep }));
}

/** Adds a step at the end of a sheet: one done again, with why. */
export function addStep(
  tx: Tx,
  sheetId: Id<"sheet">,
  route: RouteStep,
  again: { readonly reason: string | null; readonly repeatsStepId: Id<"step"> },
): void {
  const position = 1 + Math.max(-1, ...stepsOf(tx, [sheetId]).map((row) => row.position));
  tx.insert(step)
    .values({ sheetId, position, kind: route.kind, route: JSON.stringify(route), state: "todo", ...again })
    .run();
}

/** Changes one step. */
export function changeStep(tx: Tx, id: Id<"step">, change: Partial<Omit<typeof step.$inferInsert, "id" | "route">>): void {
  tx.update(step).set(change).where(eq(step.id, id)).run();
}

/** Changes how one step is worked: what it waits for. */
export function changeRoute(tx: Tx, id: Id<"step">, route: RouteStep): void {
  tx.update(step)
    .set({ route: JSON.stringify(route) })
    .where(eq(step.id, id))
    .run();
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
