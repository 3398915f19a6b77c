import type { Id, Instant } from "../../core/kinds.ts";
import { changeOrder, type OrderRow, touchBench } from "../../db/repositories/orders.ts";
import { changeStep, type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { heldAgainst } from "./checkOfSheet.ts";
import { layAside } from "./layAside.ts";
import { pullParts } from "./pullParts.ts";
import { recordBends } from "./recordBends.ts";

export type Press = "start" | "glueOn" | "done";

export type Pressed =
  | { readonly kind: "pressed"; readonly order: OrderRow }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly why: "held" | "wrong-state" | "no-glue" | "already" };

const isOpen = (step: StepRow): boolean => step.state !== "done" && step.state !== "skipped";

/** All steps that must be done before one of these kinds, and those kinds themselves when asked. */
function before(steps: readonly StepRow[], kinds: readonly string[], including: boolean): readonly StepRow[] {
  const wanted = new Set<string>(including ? kinds : []);
  const reach = (kind: string): void => {
    for (const earlier of steps.find((step) => step.kind === kind)?.route.after ?? []) {
      if (!wanted.has(earlier)) {
        wanted.add(earlier);
        reach(earlier);
      }
    }
  };
  kinds.forEach(reach);
  return steps.filter((step) => wanted.has(step.kind));
}

function finish(tx: Tx, steps: readonly StepRow[], personId: Id<"person">, now: Instant): void {
  for (const step of steps.filter(isOpen)) {
    changeStep(tx, step.id, { state: "done", personId, startedAt: step.startedAt ?? now, finishedAt: now });
  }
}

function run(tx: Tx, step: StepRow | undefined, personId: Id<"person">, now: Instant): void {
  if (step !== undefined && step.state !== "done") {
    changeStep(tx, step.id, { state: "running", personId, startedAt: now });
  }
}

/** The steps after the bench's last: measuring, signing and the walk have answers of their own. */
const afterBench = ["measure", "sign", "walk"];

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
  if (order.heldReason !== null) {
    return { kind: "refused", order, why: "held" };
  }
  if (order.state !== "confirmed" && order.state !== "building") {
    return { kind: "refused", order, why: "wrong-state" };
  }
  if (press === "start" && order.state === "building") {
    return { kind: "refused", order, why: "already" };
  }
  const sheets = sheetsOf(tx, order);
  if (press === "glueOn" && !sheets.some((sheet) => sheet.steps.some((step) => step.kind === "bondSet" && step.state === "todo"))) {
    return { kind: "refused", order, why: sheets.some((sheet) => sheet.steps.some((step) => step.kind === "bondSet")) ? "already" : "no-glue" };
  }
  for (const sheet of sheets) {
    pullParts(tx, order, sheet, { personId, now });
    if (press === "start") {
      run(tx, sheet.steps[0], personId, now);
    } else if (press === "glueOn") {
      finish(tx, before(sheet.steps, ["bondSet"], false), personId, now);
      run(
        tx,
        sheet.steps.find((step) => step.kind === "bondSet"),
        personId,
        now,
      );
    } else {
      finish(
        tx,
        sheet.steps.filter((step) => !afterBench.includes(step.kind)),
        personId,
        now,
      );
      run(
        tx,
        sheet.steps.find((step) => step.kind === "measure"),
        personId,
        now,
      );
      layAside(tx, order, sheet, now);
    }
  }
  touchBench(tx, order.truckId);
  const clubInAt = order.clubInAt ?? now;
  if (press === "done" && sheets.every((sheet) => heldAgainst(sheet) === null)) {
    finishBench(tx, order, personId, now);
    return { kind: "pressed", order: changeOrder(tx, order.id, { state: "ready", clubInAt }) };
  }
  return { kind: "pressed", order: changeOrder(tx, order.id, { state: press === "done" ? "finalCheck" : "building", clubInAt }) };
}

/** Finishes everything but the walk: the club is ready to be handed over. */
export function finishBench(tx: Tx, order: OrderRow, personId: Id<"person">, now: Instant): void {
  for (const sheet of sheetsOf(tx, order)) {
    finish(
      tx,
      sheet.steps.filter((step) => step.kind !== "walk"),
      personId,
      now,
    );
    recordBends(tx, sheet, { personId, now });
  }
  touchBench(tx, order.truckId);
}

/** Finishes the walk too. */
export function finishWalk(tx: Tx, order: OrderRow, personId: Id<"person">, now: Instant): void {
  for (const sheet of sheetsOf(tx, order)) {
    finish(tx, sheet.steps, personId, now);
  }
}
