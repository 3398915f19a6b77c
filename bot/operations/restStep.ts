import type { Id, Instant } from "../../core/kinds.ts";
import { addPress, pressesOf } from "../../db/repositories/benchPresses.ts";
import { changeOrder, type OrderRow, touchBench } from "../../db/repositories/orders.ts";
import { changeStep, type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";

export type Rest = "pause" | "resume" | "handBack";

export type Rested =
  | { readonly kind: "rested"; readonly order: OrderRow }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly why: "held" | "wrong-state" | "resting" | "not-resting" };

/** Whether work on an order rests: its last press was Pause or Hand back. */
export function isResting(presses: readonly { readonly press: string }[]): boolean {
  const last = presses.at(-1)?.press;
  return last === "pause" || last === "handBack";
}

const handsOn = ({ route }: StepRow): boolean => !route.unattended;

/** The steps in somebody's hands stop or go on; waits run by themselves. How long was worked is in the presses. */
function changeSteps(tx: Tx, order: OrderRow, rest: Rest, by: { readonly personId: Id<"person">; readonly now: Instant }): void {
  for (const { steps } of sheetsOf(tx, order)) {
    for (const step of steps.filter(handsOn)) {
      if (rest === "resume" && step.state === "paused") {
        changeStep(tx, step.id, { state: "running", personId: by.personId });
      } else if (rest !== "resume" && step.state === "running") {
        changeStep(tx, step.id, { state: "paused", ...(rest === "handBack" ? { personId: null } : {}) });
      }
    }
  }
}

/**
 * Lets work on an order rest, or go on: Pause keeps it with its technician, Hand back gives it to whoever is free.
 *
 * @param tx - the transaction
 * @param order - as read in it
 */
export function restStep(tx: Tx, order: OrderRow, rest: Rest, personId: Id<"person">, now: Instant): Rested {
  if (order.state !== "building" && order.state !== "finalCheck") {
    return { kind: "refused", order, why: "wrong-state" };
  }
  if (order.heldReason !== null) {
    return { kind: "refused", order, why: "held" };
  }
  const resting = isResting(pressesOf(tx, order.id));
  if (rest === "resume" ? !resting : resting && rest === "pause") {
    return { kind: "refused", order, why: rest === "resume" ? "not-resting" : "resting" };
  }
  addPress(tx, { orderId: order.id, press: rest, personId, at: now });
  changeSteps(tx, order, rest, { personId, now });
  touchBench(tx, order.truckId);
  return { kind: "rested", order: changeOrder(tx, order.id, {}) };
}
