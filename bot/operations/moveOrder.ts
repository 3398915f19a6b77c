import type { Instant } from "../../core/kinds.ts";
import { endReservations } from "../../db/repositories/holds.ts";
import { changeOrder, type OrderRow, type OrderState, touchBench } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { partsOfSheet } from "./partsOfSheet.ts";

export type Move = "hold" | "resume" | "scratch" | "drop";

/** Where each move makes sense; elsewhere it is refused with the states it needs. */
const allowed: Readonly<Record<Move, readonly OrderState[]>> = {
  hold: ["confirmed", "building", "finalCheck"],
  resume: ["confirmed", "building", "finalCheck"],
  scratch: ["draft", "confirmed", "building", "finalCheck", "ready"],
  drop: ["draft"],
};

export type Moved =
  | {
      readonly kind: "moved";
      readonly order: OrderRow;
      readonly cannotBeUndone: readonly string[];
      /** Parts of a withdrawn order that are out of the stock: somebody counts them back in. */
      readonly pulled: readonly string[];
    }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly wanted: readonly OrderState[] }
  | { readonly kind: "nothing-to-do"; readonly order: OrderRow };

/** What has been done to material by now: cut, glued, gripped. */
export function doneForGood(tx: Parameters<typeof sheetsOf>[0], order: OrderRow): readonly string[] {
  const irreversible = ["tipPrepare", "bond", "cut", "soleWork", "stampText"];
  const kinds = sheetsOf(tx, order).flatMap((sheet) => sheet.steps.filter((step) => step.state === "done").map((step) => step.kind));
  return irreversible.filter((kind) => kinds.includes(kind));
}

/** What was pulled for an order: the stock has not got it any more. */
function pulledParts(tx: Tx, order: OrderRow): readonly string[] {
  return order.state === "draft" || order.state === "confirmed"
    ? []
    : sheetsOf(tx, order).flatMap(({ sheetPlan }) => partsOfSheet(sheetPlan).map(({ name }) => name));
}

/** Gives a sheet's parts back; what is cut or glued is gone and says so. */
function release(tx: Tx, order: OrderRow): void {
  for (const sheet of sheetsOf(tx, order)) {
    endReservations(tx, sheet.id, "released");
  }
}

/**
 * Holds, resumes, scratches or drops an order where that makes sense.
 *
 * @param tx - the transaction
 * @param order - as read in it
 * @param move - what is asked
 * @param reason - why it is held, or null
 * @param till - when what it is short of is said to come
 */
export function moveOrder(tx: Tx, order: OrderRow, move: Move, reason: string | null, till: Instant | null = null): Moved {
  if (!allowed[move].includes(order.state)) {
    return { kind: "refused", order, wanted: allowed[move] };
  }
  if ((move === "hold") === (order.heldReason !== null) && (move === "hold" || move === "resume")) {
    return { kind: "nothing-to-do", order };
  }
  const cannotBeUndone = doneForGood(tx, order);
  touchBench(tx, order.truckId);
  if (move === "hold" || move === "resume") {
    return {
      kind: "moved",
      order: changeOrder(tx, order.id, { heldReason: move === "hold" ? (reason ?? "no reason given") : null, expectedAt: till }),
      cannotBeUndone,
      pulled: [],
    };
  }
  release(tx, order);
  const pulled = pulledParts(tx, order);
  return { kind: "moved", order: changeOrder(tx, order.id, { state: "withdrawn", heldReason: null }), cannotBeUndone, pulled };
}
