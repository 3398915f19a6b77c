import { type CheckedQuantity, type CheckTolerances, checkedQuantities } from "../../core/bag/checkTolerances.ts";
import { mustBeMeasured } from "../../core/buildSheet/mustBeMeasured.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { serviceCheck } from "../../core/buildSheet/serviceCheck.ts";
import { inchesAsFraction } from "../../core/quantity/inchesAsFraction.ts";
import { millimetres } from "../../core/quantity/units.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import type { PrintedTarget } from "../prints/sheetPrint.ts";
import { checkWord } from "./checkLines.ts";
import { readingText } from "./readingText.ts";

type Values = Readonly<Partial<Record<CheckedQuantity, number | null>>>;

interface Wanted {
  readonly written: Values;
  readonly planned: Values;
  readonly listed: readonly CheckedQuantity[];
}

const builtTo = ({ target, choice, predicted, wraps }: ClubPlan): Wanted => ({
  written: target,
  planned: { ...choice.attitude, bounceDeg: choice.bounceDeg, ...predicted, wraps },
  listed: [],
});

function wantedOf({ plan, service }: ClubFacts): Wanted | null {
  if (plan !== null) {
    return builtTo(plan);
  }
  if (service === null) {
    return null;
  }
  const { target, planned, listed } = serviceCheck(service);
  return { written: target, planned, listed };
}

function toleranceWords(quantity: CheckedQuantity, tolerances: CheckTolerances): string {
  const { tolerance } = tolerances[quantity];
  if (quantity === "lengthMm") {
    return `± ${inchesAsFraction(millimetres(tolerance))} in`;
  }
  const unit = quantity.endsWith("Mm") ? " mm" : quantity.endsWith("G") ? " g" : "";
  return tolerance === 0 ? "" : `± ${Math.round(tolerance * 100) / 100}${unit}`;
}

/** What a club is measured in: what its kind of work asks for, what was written, and what was read already. */
export function printedTargets({ kind, request, tolerances }: OrderFacts, club: ClubFacts): readonly PrintedTarget[] {
  const wanted = wantedOf(club);
  if (wanted === null) {
    return [];
  }
  const { written, planned, listed } = wanted;
  const wishOf = (quantity: CheckedQuantity): number | null => written[quantity] ?? planned[quantity] ?? null;
  const readOf = (quantity: string): number | null => club.measured.find((row) => row.quantity === quantity)?.value ?? null;
  const isWritten = (quantity: CheckedQuantity): boolean =>
    (request.clauses as Readonly<Partial<Record<CheckedQuantity, unknown>>>)[quantity] !== undefined;
  const must = mustBeMeasured(kind, club.club, { listed, wanted: (quantity) => wishOf(quantity) !== null });
  const read = checkedQuantities.filter((quantity) => must.includes(quantity) || isWritten(quantity) || readOf(quantity) !== null);
  const looks = Object.entries(club.looksWanted).map(([look, words]) => ({ what: checkWord(look), wanted: words, tolerance: "", measured: null }));
  return [
    ...read.map((quantity) => {
      const value = wishOf(quantity);
      const got = readOf(quantity);
      return {
        what: checkWord(quantity),
        wanted: value === null ? "" : readingText(quantity, value),
        tolerance: value === null ? "" : toleranceWords(quantity, tolerances),
        measured: got === null ? null : readingText(quantity, got),
      };
    }),
    ...looks,
  ];
}
