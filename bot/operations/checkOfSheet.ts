import { checkedQuantities } from "../../core/bag/checkTolerances.ts";
import { type FinalCheck, type FinalCheckQuestion, finalCheck } from "../../core/buildSheet/finalCheck.ts";
import { type Looks, lookNames } from "../../core/buildSheet/lookRows.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { serviceCheck } from "../../core/buildSheet/serviceCheck.ts";
import { measuredOf } from "../../db/repositories/measurements.ts";
import type { SheetRow } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";
import { checkTolerances } from "./shopTolerances.ts";

type HeldAgainst = Pick<FinalCheckQuestion, "kind" | "target" | "planned" | "listed"> & {
  readonly looksWanted: Looks;
  /** Whether what is only looked at must be, before the club is ready. */
  readonly looksMust: boolean;
};

/** A new club's logo and mark are compared when somebody says how they look: three presses and a line are enough. */
function builtFrom(plan: ClubPlan): HeldAgainst {
  const { choice, target, predicted } = plan;
  return {
    kind: plan.kind,
    target,
    planned: { ...choice.attitude, bounceDeg: choice.bounceDeg, ...predicted, wraps: plan.wraps },
    listed: [],
    looksWanted: {
      ...(plan.logo === null ? {} : { logo: plan.logo }),
      ...(choice.mark === null ? {} : { sleeve: choice.mark }),
      ...(plan.grip === null ? {} : { grip: plan.grip.model.name, rib: plan.grip.model.rib ? "rib" : "none" }),
      ...(plan.shaft === null ? {} : { shaft: plan.shaft.model.name }),
      head: choice.head.serial,
    },
    looksMust: false,
  };
}

/** What a sheet's club is held against; null where nothing is: a finished club taken as found. */
export function heldAgainst({ sheetPlan }: SheetRow): HeldAgainst | null {
  const { plan, service = null } = sheetPlan;
  return plan !== null ? builtFrom(plan) : service === null ? null : { ...serviceCheck(service), looksMust: true };
}

const isLook = (quantity: string): boolean => lookNames.some((name) => name === quantity);
const isChecked = (quantity: string): boolean => checkedQuantities.some((name) => name === quantity);

/** The check of a sheet's club against what was written; null while nothing is measured, or where nothing is checked. */
export function checkOfSheet(reader: Reader, sheet: SheetRow): FinalCheck | null {
  const held = heldAgainst(sheet);
  const rows = measuredOf(reader, sheet.id);
  if (held === null || rows.length === 0) {
    return null;
  }
  const { looksWanted, looksMust, ...question } = held;
  const seen: Looks = Object.fromEntries(rows.filter(({ quantity }) => isLook(quantity)).map(({ quantity, asWritten }) => [quantity, asWritten]));
  const wanted: Looks = looksMust ? looksWanted : Object.fromEntries(Object.entries(looksWanted).filter(([look]) => look in seen));
  return finalCheck({
    ...question,
    measured: Object.fromEntries(rows.filter(({ quantity }) => isChecked(quantity)).map(({ quantity, value }) => [quantity, value])),
    looks: { wanted, seen },
    tolerances: checkTolerances(reader),
  });
}
