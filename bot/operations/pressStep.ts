import type { Id, Instant } from "../../core/kinds.ts";
import { addPress } from "../../db/repositories/benchPresses.ts";
import { changeOrder, type OrderRow, touchBench } from "../../db/repositories/orders.ts";
import { changeStep, type SheetRow, type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { heldAgainst } from "./checkOfSheet.ts";
import { finishBench, finishSteps, leaveBench, type StepBy } from "./finishSteps.ts";
import { pullParts } from "./pullParts.ts";

export type Press = "start" | "glueOn" | "done";

export type Pressed =
  | { readonly kind: "pressed"; readonly order: OrderRow }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly why: "held" | "wrong-state" | "no-glue" | "already" };

/** All steps that must be done before one of this kind. */
function before(steps: readonly StepRow[], kind: string): readonly StepRow[] {
  const earlier = new Set<string>();
  const reach = (later: string): void => {
    for (const one of steps.find((step) => step.kind === later)?.route.after ?? []) {
      if (!earlier.has(one)) {
        earlier.add(one);
        reach(one);
      }
    }
  };
  reach(kind);
  return steps.filter((step) => earlier.has(step.kind));
}

function run(tx: Tx, step: StepRow | undefined, { personId, now }: StepBy): void {
  if (step !== undefined && step.state !== "done") {
    changeStep(tx, step.id, { state: "running", personId, startedAt: now });
  }
}

/** The newest of a kind: of one done again, the second. */
const ofKind = ({ steps }: SheetRow, kind: string): StepRow | undefined => steps.findLast((step) => step.kind === kind && step.state !== "skipped");

function refusal(order: OrderRow, sheets: readonly SheetRow[], press: Press): Extract<Pressed, { kind: "refused" }>["why"] | null {
  if (order.heldReason !== null) {
    return "held";
  }
  if (order.state !== "confirmed" && order.state !== "building") {
    return "wrong-state";
  }
  if (press === "start") {
    return order.state === "building" ? "already" : null;
  }
  const setting = sheets.flatMap(({ steps }) => steps.filter(({ kind }) => kind === "bondSet"));
  if (press === "done" || setting.some(({ state }) => state === "todo")) {
    return null;
  }
  return setting.length > 0 ? "already" : "no-glue";
}

function pressOn(tx: Tx, order: OrderRow, sheet: SheetRow, press: Press, by: StepBy): void {
  switch (press) {
    case "start":
      run(tx, sheet.steps[0], by);
      return;
    case "glueOn":
      finishSteps(tx, before(sheet.steps, "bondSet"), by);
      run(tx, ofKind(sheet, "bondSet"), by);
      return;
    case "done":
      leaveBench(tx, order, sheet, by);
      run(tx, ofKind(sheet, "measure"), by);
  }
}

/**
 * Records one of the three presses: Start, Glue on, Done. A missing press is normal: a later one finishes what lies before.
 *
 * @param tx - the transaction
 * @param order - as read in it
 * @param press - which
 * @param personId - who pressed
 * @param now - the moment
 */
export function pressStep(tx: Tx, order: OrderRow, press: Press, personId: Id<"person">, now: Instant): Pressed {
  const sheets = sheetsOf(tx, order);
  const why = refusal(order, sheets, press);
  if (why !== null) {
    return { kind: "refused", order, why };
  }
  addPress(tx, { orderId: order.id, press, personId, at: now });
  const by = { personId, now };
  for (const sheet of sheets) {
    pullParts(tx, order, sheet, by);
    pressOn(tx, order, sheet, press, by);
  }
  touchBench(tx, order.truckId);
  const clubInAt = order.clubInAt ?? now;
  if (press === "done" && sheets.every((sheet) => heldAgainst(sheet) === null)) {
    finishBench(tx, order, by);
    return { kind: "pressed", order: changeOrder(tx, order.id, { state: "ready", clubInAt }) };
  }
  return { kind: "pressed", order: changeOrder(tx, order.id, { state: press === "done" ? "finalCheck" : "building", clubInAt }) };
}
