import type { Id, Instant } from "../../core/kinds.ts";
import { addMeasurement, changeOrder, type OrderRow, sheetsOf } from "../../db/repositories/orders.ts";
import type { Tx } from "../../db/write.ts";
import type { MeasuredValue } from "../boundary/reading.ts";
import { checkOf } from "./orderFacts.ts";
import { finishBench } from "./pressStep.ts";

export type Measured =
  | { readonly kind: "measured"; readonly order: OrderRow; readonly verdict: "ready" | "off" | "unmeasured" | "no-plan" }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly why: "held" | "wrong-state" };

/**
 * Keeps the technician's line and compares it with what was written; a club that holds is ready to be handed over.
 *
 * @param tx - the transaction
 * @param order - as read in it
 * @param values - what the gauge said, in mm, g, degrees and points
 * @param by - who measured, on which gauge, when
 */
export function measureOrder(
  tx: Tx,
  order: OrderRow,
  values: readonly MeasuredValue[],
  by: { readonly personId: Id<"person">; readonly gauge: string; readonly now: Instant },
): Measured {
  if (order.heldReason !== null) {
    return { kind: "refused", order, why: "held" };
  }
  if (order.state !== "building" && order.state !== "finalCheck") {
    return { kind: "refused", order, why: "wrong-state" };
  }
  const sheets = sheetsOf(tx, order);
  const [sheet] = sheets;
  if (sheet === undefined) {
    throw new Error(`order ${order.id} has no sheet`);
  }
  for (const { quantity, value, asWritten } of values) {
    addMeasurement(tx, { sheetId: sheet.id, quantity, value, asWritten, gauge: by.gauge, personId: by.personId, at: by.now });
  }
  const overall = sheet.sheetPlan.plan === null ? "no-plan" : (checkOf(tx, order, sheet)?.overall ?? "unmeasured");
  if (overall === "off" || overall === "unmeasured") {
    return { kind: "measured", order: changeOrder(tx, order.id, { state: "finalCheck" }), verdict: overall };
  }
  finishBench(tx, order, by.personId, by.now);
  return { kind: "measured", order: changeOrder(tx, order.id, { state: "ready" }), verdict: overall === "no-plan" ? "no-plan" : "ready" };
}
