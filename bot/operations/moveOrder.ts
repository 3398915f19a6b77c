import type { Instant } from "../../core/kinds.ts";
import { endReservations } from "../../db/repositories/holds.ts";
import { changeOrder, type OrderRow, type OrderState, touchBench } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { doneForGood } from "./doneForGood.ts";
import { partsOfSheet } from "./partsOfSheet.ts";
import { pauseIfWorked } from "./restStep.ts";

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

interface MoveWish {
  /** Why it is held. */
  readonly reason: string | null;
  /** When what it is short of is said to come. */
  readonly till: Instant | null;
  readonly now: Instant;
}

/**
 * Holds, resumes, scratches or drops an order where that makes sense. One that is held while somebody is at it rests, and is taken up
 * again at the bench.
 *
 * @param tx - the transaction
 * @param order - as read in it
 * @param move - what is asked
 */
export function moveOrder(tx: Tx, order: OrderRow, move: Move, { reason, till, now }: MoveWish): Moved {
  if (!allowed[move].includes(order.state)) {
    return { kind: "refused", order, wanted: allowed[move] };
  }
  if ((move === "hold") === (order.heldReason !== null) && (move === "hold" || move === "resume")) {
    return { kind: "nothing-to-do", order };
  }
  const cannotBeUndone = doneForGood(tx, order);
  touchBench(tx, order.truckId);
  if (move === "hold") {
    pauseIfWorked(tx, order, now);
    const held = changeOrder(tx, order.id, { heldReason: reason ?? "no reason given", expectedAt: till });
    return { kind: "moved", order: held, cannotBeUndone, pulled: [] };
  }
  if (move === "resume") {
    return { kind: "moved", order: changeOrder(tx, order.id, { heldReason: null, expectedAt: null }), cannotBeUndone, pulled: [] };
  }
  release(tx, order);
  const pulled = pulledParts(tx, order);
  return { kind: "moved", order: changeOrder(tx, order.id, { state: "withdrawn", heldReason: null }), cannotBeUndone, pulled };
}
