import type { Instant } from "../../core/kinds.ts";
import { addHead, headBySerial, putHead } from "../../db/repositories/heads.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { playerById } from "../../db/repositories/people.ts";
import type { SheetRow } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";
import { ownHead } from "./ownHead.ts";
import { playersBin } from "./playersBin.ts";

/** What comes off a club goes to its player's bin: the head a swap took off. */
export function layAside(tx: Tx, order: OrderRow, { sheetPlan }: SheetRow, now: Instant): void {
  const { plan, reference = null } = sheetPlan;
  const serial = reference?.headSerial ?? null;
  if (order.kind !== "swap" || plan === null || reference === null || serial === null || serial === plan.choice.head.serial) {
    return;
  }
  const hand = playerById(tx, order.playerId)?.hand ?? "right";
  const known = headBySerial(tx, serial);
  if (known !== null) {
    putHead(tx, known.id, playersBin(tx, order));
    return;
  }
  const own = ownHead(tx, reference, hand);
  if (own !== null) {
    const { model, hand: side, stampedLoftDeg, soledLoftDeg, designLieDeg, soledFaceDeg, bounceDeg, massG } = own;
    addHead(tx, {
      serial,
      modelId: model.id,
      hand: side,
      stampedLoftDeg,
      soledLoftDeg,
      designLieDeg,
      soledFaceDeg,
      bounceDeg,
      massG,
      measuredAt: reference.measuredAt ?? now,
      placeId: playersBin(tx, order),
    });
  }
}
