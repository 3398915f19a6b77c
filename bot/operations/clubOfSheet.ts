import type { SpecClub } from "../../core/bag/specClub.ts";
import type { Instant } from "../../core/kinds.ts";
import { measuredOf, type SheetRow } from "../../db/repositories/orders.ts";
import type { Reader } from "../../db/write.ts";

/**
 * The club a sheet built, as last left on the gauge: what was measured, else what its plan says it comes to.
 *
 * @returns null for work without a plan
 */
export function clubOfSheet(reader: Reader, sheet: SheetRow): SpecClub | null {
  const { plan } = sheet.sheetPlan;
  if (plan === null) {
    return null;
  }
  const measured = measuredOf(reader, sheet.id);
  const read = (quantity: string): number | null => measured.find((row) => row.quantity === quantity)?.value ?? null;
  const newest = measured.reduce<Instant | null>((latest, row) => (latest === null || row.at > latest ? row.at : latest), null);
  const { choice, target, predicted } = plan;
  return {
    club: plan.club,
    outside: false,
    headModel: choice.head.model.name,
    headSerial: choice.head.serial,
    stampedLoftDeg: choice.head.stampedLoftDeg,
    squaredLoftDeg: read("squaredLoftDeg") ?? choice.attitude.squaredLoftDeg,
    soledFaceDeg: read("soledFaceDeg") ?? choice.attitude.soledFaceDeg,
    seatedLieDeg: read("seatedLieDeg") ?? choice.attitude.seatedLieDeg,
    bounceDeg: read("bounceDeg") ?? choice.head.bounceDeg,
    grind: choice.head.model.grind,
    sleeveModel: choice.sleeve?.name ?? null,
    sleeveMark: choice.mark,
    lengthMm: read("lengthMm") ?? predicted.lengthMm,
    swingWeightPoints: read("swingWeightPoints") ?? predicted.swingWeightPoints,
    totalMassG: read("totalMassG") ?? predicted.totalMassG,
    headMassG: read("headMassG") ?? choice.head.massG,
    shaftModel: plan.shaft?.model.name ?? target.shaft,
    tipTrimMm: plan.tipTrimMm,
    logo: plan.logo,
    gripModel: plan.grip?.model.name ?? target.grip,
    rib: plan.grip?.model.rib ?? target.rib,
    wraps: read("wraps") ?? plan.wraps,
    stamp: null,
    note: null,
    measuredAt: newest,
    gauge: measured[0]?.gauge ?? null,
  };
}
