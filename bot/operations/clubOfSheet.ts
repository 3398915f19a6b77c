import type { SpecClub } from "../../core/bag/specClub.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { ServicePlan } from "../../core/buildSheet/servicePlan.ts";
import { type ClubName, instant } from "../../core/kinds.ts";
import { measuredOf } from "../../db/repositories/measurements.ts";
import type { SheetRow } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";

/** A club nothing is known of. */
const unknownClub = (club: ClubName): SpecClub => ({
  club,
  outside: false,
  headModel: null,
  headSerial: null,
  stampedLoftDeg: null,
  squaredLoftDeg: null,
  soledFaceDeg: null,
  seatedLieDeg: null,
  bounceDeg: null,
  grind: null,
  sleeveModel: null,
  sleeveMark: null,
  lengthMm: null,
  swingWeightPoints: null,
  totalMassG: null,
  headMassG: null,
  shaftModel: null,
  tipTrimMm: null,
  logo: null,
  gripModel: null,
  rib: null,
  wraps: null,
  stamp: null,
  note: null,
  measuredAt: null,
  gauge: null,
});

type Known = Partial<SpecClub>;

/** The head as it hangs on the club: its weights and lead with it. */
const headMassG = ({ choice, weights, leadG }: ClubPlan): number =>
  weights.reduce((sum, { model, count }) => sum + count * model.massG, choice.head.massG + leadG);

/** What a plan of parts says the club comes to. */
function builtClub(plan: ClubPlan, reference: SpecClub | null): Known {
  const { choice, target, predicted } = plan;
  return {
    outside: false,
    headModel: choice.head.model.name,
    headSerial: choice.head.serial,
    stampedLoftDeg: choice.head.stampedLoftDeg,
    ...choice.attitude,
    bounceDeg: choice.bounceDeg,
    grind: choice.head.model.grind,
    sleeveModel: choice.sleeve?.name ?? null,
    sleeveMark: choice.mark,
    lengthMm: predicted.lengthMm,
    swingWeightPoints: predicted.swingWeightPoints,
    totalMassG: predicted.totalMassG,
    balancePointMm: predicted.balancePointMm,
    inertiaKgCm2: predicted.inertiaKgCm2,
    headMassG: headMassG(plan),
    shaftModel: plan.shaft?.model.name ?? target.shaft,
    tipTrimMm: plan.tipTrimMm ?? reference?.tipTrimMm ?? null,
    logo: plan.logo,
    gripModel: plan.grip?.model.name ?? target.grip,
    rib: plan.grip?.model.rib ?? target.rib,
    wraps: plan.wraps,
  };
}

/** What work on a club that exists changes beside its readings. */
function changedParts(service: ServicePlan): Known {
  switch (service.kind) {
    case "turn":
      return {
        sleeveModel: service.sleeve.name,
        sleeveMark: service.toMark,
        ...(service.logoAfter === "up" || service.logoAfter === "down" ? { logo: service.logoAfter } : { logo: null }),
      };
    case "regrip":
      return { gripModel: service.grip.model.name, rib: service.rib, wraps: service.wraps };
    case "grind":
      return service.grindWanted === null ? {} : { grind: service.grindWanted };
    case "stamp":
      return { stamp: service.text };
    default:
      return {};
  }
}

const withoutNulls = (values: object): Known =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== null && value !== undefined));

/** What was read off the gauge, and the newest moment of it. */
function readings(reader: Reader, sheet: SheetRow): Known {
  const measured = measuredOf(reader, sheet.id);
  const [first] = measured;
  if (first === undefined) {
    return {};
  }
  const isReading = (quantity: string): boolean => /(Deg|Mm|G|Points|Cpm|KgCm2)$/.test(quantity) || quantity === "wraps";
  const newest = measured.map(({ at }) => at).reduce((latest, at) => instant(Math.max(latest, at)), first.at);
  return {
    ...Object.fromEntries(measured.filter(({ quantity }) => isReading(quantity)).map(({ quantity, value }) => [quantity, value])),
    measuredAt: newest,
    gauge: first.gauge,
  };
}

/**
 * The club a sheet made, as last left on the gauge: what was measured, else what its plan says it comes to, else as it
 * was on record before.
 *
 * @returns null for work of which neither a plan nor a club is known
 */
export function clubOfSheet(reader: Reader, sheet: SheetRow): SpecClub | null {
  const { plan, service = null, reference = null } = sheet.sheetPlan;
  if (plan !== null) {
    const { measuredAt, gauge } = unknownClub(sheet.club);
    return { ...unknownClub(sheet.club), ...builtClub(plan, reference), measuredAt, gauge, ...readings(reader, sheet) };
  }
  if (service === null && reference === null) {
    return null;
  }
  return {
    ...unknownClub(sheet.club),
    ...(reference ?? {}),
    ...(service === null ? {} : { ...withoutNulls(service.predicted), ...changedParts(service) }),
    ...readings(reader, sheet),
  };
}
