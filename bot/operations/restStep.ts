import type { Id, Instant } from "../../core/kinds.ts";
import { addPress, pressesOf } from "../../db/repositories/benchPresses.ts";
import { changeOrder, type OrderRow, ordersIn, touchBench } from "../../db/repositories/orders.ts";
import { changeStep, type SheetRow, type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { doneForGood } from "./doneForGood.ts";

export type Rest = "pause" | "resume" | "handBack";

export type Rested =
  | { readonly kind: "rested"; readonly order: OrderRow; readonly cannotBeUndone: readonly string[] }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly why: "held" | "wrong-state" | "resting" | "handed-back" | "not-resting" };

/** Whether work on an order rests: its last press was Pause or Hand back. */
function isResting(presses: readonly { readonly press: string }[]): boolean {
  const last = presses.at(-1)?.press;
  return last === "pause" || last === "handBack";
}

const isUnderWay = ({ state }: OrderRow): boolean => state === "building" || state === "finalCheck";
const handsOn = ({ route }: StepRow): boolean => !route.unattended;
const isOpen = ({ state }: StepRow): boolean => state !== "done" && state !== "skipped";

/** The step that holds where a resting club lies, in its reason: the last that is worked, which is always open. */
export function restingStep({ steps }: Pick<SheetRow, "steps">): StepRow | undefined {
  return steps.findLast((step) => handsOn(step) && isOpen(step) && step.repeatsStepId === null);
}

interface RestBy {
  readonly personId: Id<"person">;
  readonly now: Instant;
  /** Where it lies meanwhile, where that was said. */
  readonly lies: string | null;
}

/** The steps in somebody's hands stop or go on; waits run by themselves. How long was worked is in the presses. */
function changeSteps(tx: Tx, sheet: SheetRow, rest: Rest, by: RestBy): void {
  for (const step of sheet.steps.filter(handsOn)) {
    if (rest === "resume" && step.state === "paused") {
      changeStep(tx, step.id, { state: "running", personId: by.personId });
    } else if (rest !== "resume" && (step.state === "running" || step.state === "paused")) {
      changeStep(tx, step.id, { state: "paused", ...(rest === "handBack" ? { personId: null } : {}) });
    }
  }
  const place = restingStep(sheet);
  if (place !== undefined && (rest === "resume" || by.lies !== null)) {
    changeStep(tx, place.id, { reason: rest === "resume" ? null : by.lies });
  }
}

function rested(tx: Tx, order: OrderRow, rest: Rest, by: RestBy): OrderRow {
  addPress(tx, { orderId: order.id, press: rest, personId: by.personId, at: by.now });
  for (const sheet of sheetsOf(tx, order)) {
    changeSteps(tx, sheet, rest, by);
  }
  touchBench(tx, order.truckId);
  return changeOrder(tx, order.id, {});
}

function refusal(tx: Tx, order: OrderRow, rest: Rest, lies: string | null): Extract<Rested, { kind: "refused" }>["why"] | null {
  if (!isUnderWay(order)) {
    return "wrong-state";
  }
  if (order.heldReason !== null) {
    return "held";
  }
  const presses = pressesOf(tx, order.id);
  if (rest === "resume") {
    return isResting(presses) ? null : "not-resting";
  }
  if (presses.at(-1)?.press === "handBack") {
    return rest === "handBack" && lies !== null ? null : "handed-back";
  }
  return rest === "pause" && isResting(presses) ? "resting" : null;
}

/**
 * Lets work on an order rest, or go on: Pause keeps it with its technician, Hand back gives it to whoever is free.
 *
 * @param tx - the transaction
 * @param order - as read in it
 */
export function restStep(tx: Tx, order: OrderRow, rest: Rest, by: RestBy): Rested {
  const why = refusal(tx, order, rest, by.lies);
  return why === null
    ? { kind: "rested", order: rested(tx, order, rest, by), cannotBeUndone: doneForGood(tx, order) }
    : { kind: "refused", order, why };
}

/** An order that is taken from the bench rests in the hands it was in, until somebody takes it up again. */
export function pauseIfWorked(tx: Tx, order: OrderRow, now: Instant): OrderRow {
  const presses = isUnderWay(order) ? pressesOf(tx, order.id) : [];
  const last = presses.at(-1);
  return last === undefined || isResting(presses) ? order : rested(tx, order, "pause", { personId: last.personId, now, lies: null });
}

/** What somebody is at rests while they are away. */
export function pauseWorkOf(tx: Tx, truckId: Id<"truck">, personId: Id<"person">, now: Instant): readonly OrderRow[] {
  const own = ordersIn(tx, truckId, ["building", "finalCheck"]).filter(({ id }) => {
    const presses = pressesOf(tx, id);
    return presses.at(-1)?.personId === personId && !isResting(presses);
  });
  return own.map((order) => pauseIfWorked(tx, order, now));
}
