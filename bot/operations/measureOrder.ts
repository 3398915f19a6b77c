import type { ClubName, Id, Instant } from "../../core/kinds.ts";
import { addMeasurement } from "../../db/repositories/measurements.ts";
import { changeOrder, type OrderRow } from "../../db/repositories/orders.ts";
import { type SheetRow, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import type { MeasuredValue } from "../boundary/reading.ts";
import { checkOfSheet, heldAgainst } from "./checkOfSheet.ts";
import { finishBench } from "./finishSteps.ts";

export type Measured =
  | { readonly kind: "measured"; readonly order: OrderRow; readonly verdict: "ready" | "off" | "unmeasured" | "no-plan" }
  | { readonly kind: "refused"; readonly order: OrderRow; readonly why: "held" | "wrong-state" }
  /** Of an order of several clubs, a value that names none of them, or one it has not got. */
  | { readonly kind: "which-club"; readonly order: OrderRow; readonly clubs: readonly { readonly club: ClubName; readonly copy: number }[] };

interface By {
  readonly personId: Id<"person">;
  readonly gauge: string;
  readonly now: Instant;
}

const refusal = (order: OrderRow): Measured | null => {
  if (order.heldReason !== null) {
    return { kind: "refused", order, why: "held" };
  }
  return order.state === "building" || order.state === "finalCheck" ? null : { kind: "refused", order, why: "wrong-state" };
};

/** The sheet a value was said of: its club, or the only one there is. */
function sheetOf(sheets: readonly SheetRow[], { club, copy }: MeasuredValue): SheetRow | null {
  const named = sheets.filter((sheet) => (club === null || sheet.club === club) && (copy === null || sheet.copy === copy));
  return named.length === 1 ? (named[0] ?? null) : null;
}

const rowOf = (value: MeasuredValue) =>
  value.kind === "quantity"
    ? { quantity: value.quantity, value: value.value, asWritten: value.asWritten, stage: value.stage }
    : { quantity: value.look, value: 0, asWritten: value.seen, stage: value.stage };

type Overall = "same" | "close" | "off" | "unmeasured" | "no-plan";

function overallOf(tx: Tx, sheet: SheetRow): Overall {
  return heldAgainst(sheet) === null ? "no-plan" : (checkOfSheet(tx, sheet)?.overall ?? "unmeasured");
}

/** The worst of all clubs decides: an order is ready when every club of it is. */
function settle(tx: Tx, order: OrderRow, by: By): Measured {
  const found = sheetsOf(tx, order).map((sheet) => overallOf(tx, sheet));
  const held = (["off", "unmeasured"] as const).find((verdict) => found.includes(verdict));
  if (held !== undefined) {
    return { kind: "measured", order: changeOrder(tx, order.id, { state: "finalCheck" }), verdict: held };
  }
  finishBench(tx, order, by);
  const verdict = found.every((overall) => overall === "no-plan") ? "no-plan" : "ready";
  return { kind: "measured", order: changeOrder(tx, order.id, { state: "ready" }), verdict };
}

/**
 * Keeps the technician's line and compares it with what was written; when every club holds, the order is ready to be
 * handed over.
 *
 * @param tx - the transaction
 * @param order - as read in it
 * @param values - what the gauge said, in mm, g, degrees and points, and what was seen; each of its club
 * @param by - who measured, on which gauge, when
 */
export function measureOrder(tx: Tx, order: OrderRow, values: readonly MeasuredValue[], by: By): Measured {
  const refused = refusal(order);
  if (refused !== null) {
    return refused;
  }
  const sheets = sheetsOf(tx, order);
  const placed = values.map((value) => ({ sheet: sheetOf(sheets, value), value }));
  if (placed.some(({ sheet }) => sheet === null)) {
    return { kind: "which-club", order, clubs: sheets.map(({ club, copy }) => ({ club, copy })) };
  }
  for (const { sheet, value } of placed) {
    if (sheet !== null) {
      addMeasurement(tx, { ...rowOf(value), sheetId: sheet.id, gauge: by.gauge, personId: by.personId, at: by.now });
    }
  }
  return settle(tx, order, by);
}

/** Notes everything that is only looked at as written: logo, rib, sleeve mark, stamp. */
export function looksAsWritten(tx: Tx, order: OrderRow, by: By): Measured {
  const refused = refusal(order);
  if (refused !== null) {
    return refused;
  }
  for (const sheet of sheetsOf(tx, order)) {
    for (const [quantity, wanted] of Object.entries(heldAgainst(sheet)?.looksWanted ?? {})) {
      addMeasurement(tx, { sheetId: sheet.id, quantity, value: 0, asWritten: wanted, gauge: by.gauge, personId: by.personId, at: by.now });
    }
  }
  return settle(tx, order, by);
}
