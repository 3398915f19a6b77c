import type { Id, Instant } from "../../core/kinds.ts";
import { addPress } from "../../db/repositories/benchPresses.ts";
import { type OrderRow, touchBench } from "../../db/repositories/orders.ts";
import { changeStep, type SheetRow, type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { layAside } from "./layAside.ts";
import { recordBends } from "./recordBends.ts";

export interface StepBy {
  readonly personId: Id<"person">;
  readonly now: Instant;
}

const isOpen = (step: StepRow): boolean => step.state !== "done" && step.state !== "skipped";

/** The steps after the bench's last: measuring, signing and the walk have answers of their own. */
const afterBench = ["measure", "sign", "walk"];

/** Finishes those that are still open. */
export function finishSteps(tx: Tx, steps: readonly StepRow[], { personId, now }: StepBy): void {
  for (const step of steps.filter(isOpen)) {
    changeStep(tx, step.id, { state: "done", personId, startedAt: step.startedAt ?? now, finishedAt: now });
  }
}

/** The club leaves the bench, once: all before measuring is finished, what came off it is laid aside. */
export function leaveBench(tx: Tx, order: OrderRow, sheet: SheetRow, by: StepBy): void {
  const steps = sheet.steps.filter(({ kind }) => !afterBench.includes(kind));
  if (steps.some(isOpen)) {
    finishSteps(tx, steps, by);
    layAside(tx, order, sheet, by.now);
  }
}

/** Finishes everything but the walk: the club is ready to be handed over. */
export function finishBench(tx: Tx, order: OrderRow, by: StepBy): void {
  addPress(tx, { orderId: order.id, press: "checked", personId: by.personId, at: by.now });
  for (const sheet of sheetsOf(tx, order)) {
    leaveBench(tx, order, sheet, by);
    finishSteps(
      tx,
      sheet.steps.filter(({ kind }) => kind === "measure" || kind === "sign"),
      by,
    );
    recordBends(tx, sheet, by);
  }
  touchBench(tx, order.truckId);
}

/** Finishes the walk too. */
export function finishWalk(tx: Tx, order: OrderRow, by: StepBy): void {
  for (const sheet of sheetsOf(tx, order)) {
    finishSteps(tx, sheet.steps, by);
  }
}
