import type { ClubFamily, Id, Instant } from "../../core/kinds.ts";
import { bendHead, headBySerial } from "../../db/repositories/heads.ts";
import { measuredOf } from "../../db/repositories/measurements.ts";
import type { SheetRow } from "../../db/repositories/sheets.ts";
import type { Tx } from "../../db/write.ts";

/** How far a reading went from found to left; null where one of the two was not read. */
function readChange(tx: Tx, sheet: SheetRow, quantity: string): number | null {
  const [found, left] = (["found", "left"] as const).map((stage) => measuredOf(tx, sheet.id, stage).find((row) => row.quantity === quantity)?.value);
  return found === undefined || left === undefined ? null : left - found;
}

/** The bend a sheet asked for; none where it asked for something else. */
function plannedBend({ sheetPlan }: SheetRow): { readonly loftDeg: number; readonly lieDeg: number } {
  const { plan, service = null } = sheetPlan;
  const bend = service?.kind === "bend" ? service : (plan?.choice.bend ?? null);
  return { loftDeg: bend?.loftChangeDeg ?? 0, lieDeg: bend?.lieChangeDeg ?? 0 };
}

/** Only these are bent in the day's work; of a wood a reading also changes by a turn. */
const bentFamilies: readonly ClubFamily[] = ["iron", "wedge", "putter"];

/**
 * Keeps on record how far a head was bent: metal hardens, and the next bend is counted with it. As found and as left decide
 * where both were read, in a bag check too, else what the sheet asked for; of a wood only where a bend was asked for. A
 * head on no record here is not kept.
 */
export function recordBends(tx: Tx, sheet: SheetRow, by: { readonly personId: Id<"person">; readonly now: Instant }): void {
  const planned = plannedBend(sheet);
  const loftChangeDeg = readChange(tx, sheet, "squaredLoftDeg") ?? planned.loftDeg;
  const lieChangeDeg = readChange(tx, sheet, "seatedLieDeg") ?? planned.lieDeg;
  const serial = sheet.sheetPlan.plan?.choice.head.serial ?? sheet.sheetPlan.reference?.headSerial ?? null;
  if (serial === null || (loftChangeDeg === 0 && lieChangeDeg === 0)) {
    return;
  }
  const head = headBySerial(tx, serial);
  const isAsked = planned.loftDeg !== 0 || planned.lieDeg !== 0;
  if (head !== null && (isAsked || bentFamilies.includes(head.model.family))) {
    bendHead(tx, { headId: head.id, loftChangeDeg, lieChangeDeg, personId: by.personId, at: by.now });
  }
}
