import type { OrderRow } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";

const irreversible = ["tipPrepare", "bond", "cut", "soleWork", "stampText"];

/** What has been done to material by now: cut, glued, ground, stamped. */
export function doneForGood(reader: Reader, order: OrderRow): readonly string[] {
  const kinds = sheetsOf(reader, order).flatMap((sheet) => sheet.steps.filter((step) => step.state === "done").map((step) => step.kind));
  return irreversible.filter((kind) => kinds.includes(kind));
}
