import { endReservations } from "../../db/repositories/holds.ts";
import { changeOrder, type OrderRow, orderById } from "../../db/repositories/orders.ts";
import type { SheetMove } from "../../db/repositories/sheetPlan.ts";
import { changeSheetPlan, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { holdSheet } from "./holdParts.ts";
import { PlanMoved } from "./planMoved.ts";

/** A move is good while its order is as it was seen and its first step has not begun. */
function asSeen(tx: Tx, { order, version, number }: SheetMove): OrderRow {
  const row = orderById(tx, order);
  if (row === null || row.state !== "confirmed" || row.version !== version) {
    throw new PlanMoved([`order ${number} as it was`]);
  }
  return row;
}

/**
 * Gives confirmed orders the other heads that an order's plan counts on, so that it may have theirs. Every one of them
 * is no further from what was written than before.
 *
 * @param tx - the transaction that confirms the order
 * @param order - still a draft
 * @returns the orders that took another head, as they are now
 * @throws {PlanMoved} when one of them has changed, or a part of its new plan is gone
 */
export function moveSheets(tx: Tx, order: OrderRow): readonly OrderRow[] {
  const moves = sheetsOf(tx, order).flatMap(({ sheetPlan }) => sheetPlan.moves ?? []);
  const rows = moves.map((move) => ({ move, row: asSeen(tx, move) }));
  for (const { move } of rows) {
    endReservations(tx, move.sheet, "released");
  }
  const gone = rows.flatMap(({ move, row }) => {
    const sheet = sheetsOf(tx, row).find(({ id }) => id === move.sheet);
    if (sheet === undefined) {
      return [`order ${move.number} as it was`];
    }
    const sheetPlan = { ...sheet.sheetPlan, plan: move.plan };
    changeSheetPlan(tx, sheet.id, sheetPlan);
    return holdSheet(tx, row, { id: sheet.id, sheetPlan });
  });
  if (gone.length > 0) {
    throw new PlanMoved(gone);
  }
  return [...new Set(rows.map(({ row }) => row.id))].map((id) => changeOrder(tx, id, {}));
}
