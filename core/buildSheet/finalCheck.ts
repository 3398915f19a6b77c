import { type CheckRow, checkRow, type Verdict, worstVerdict } from "../bag/checkRow.ts";
import { type CheckedQuantity, type CheckTolerances, checkedQuantities } from "../bag/checkTolerances.ts";
import { knownClub } from "../bag/knownClub.ts";
import { clubFamily, type OrderKind, orderKinds } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type LookName, type LookRow, type Looks, lookRows } from "./lookRows.ts";
import { mustBeMeasured } from "./mustBeMeasured.ts";
import type { Target } from "./plan.ts";

interface FinalCheckRow extends CheckRow {
  /** Written (or taken over), or only what the plan says such a club comes to. */
  readonly wantedFrom: "target" | "plan";
}

export interface FinalCheck {
  readonly rows: readonly FinalCheckRow[];
  readonly looks: readonly LookRow[];
  /** What this kind of work must be measured in or looked at for, and was not. */
  readonly unmeasured: readonly (CheckedQuantity | LookName)[];
  /** The worst row; `unmeasured` while nothing is off and anything that must be measured or looked at is not. */
  readonly overall: Verdict | "unmeasured";
}

/** What a finished club is held against. */
export interface FinalCheckQuestion {
  readonly kind: OrderKind;
  readonly target: Target;
  /** What the plan says the club comes to; null or left out where it does not know. */
  readonly planned: Readonly<Partial<Record<CheckedQuantity, number | null>>>;
  /** What the sheet of a check or a repair lists to be read; empty for other work. */
  readonly listed: readonly CheckedQuantity[];
  readonly measured: Readonly<Partial<Record<CheckedQuantity, number>>>;
  readonly looks: { readonly wanted: Looks; readonly seen: Looks };
  readonly tolerances: CheckTolerances;
}

/** No club but a putter may be longer than 48 in: past it, length is no longer only a matter of feel. */
const LONGEST_CLUB_MM = 48 * 25.4;
const SLACK_MM = 1e-9;

function wantedOf({ target, planned }: FinalCheckQuestion, quantity: CheckedQuantity): { value: number; from: "target" | "plan" } | null {
  const written = (target as Readonly<Partial<Record<CheckedQuantity, number | null>>>)[quantity] ?? null;
  const predicted = planned[quantity] ?? null;
  if (written !== null) {
    return { value: written, from: "target" };
  }
  return predicted === null ? null : { value: predicted, from: "plan" };
}

function checked(question: FinalCheckQuestion, quantity: CheckedQuantity): readonly FinalCheckRow[] {
  const { target, measured, tolerances } = question;
  const wanted = wantedOf(question, quantity);
  const got = measured[quantity];
  if (wanted === null || got === undefined) {
    return [];
  }
  const row = checkRow(quantity, wanted.value, got, tolerances);
  const tooLong = quantity === "lengthMm" && got > LONGEST_CLUB_MM + SLACK_MM && clubFamily(target.club) !== "putter";
  return [{ ...row, concerns: tooLong ? "conformity" : row.concerns, wantedFrom: wanted.from }];
}

/**
 * Compares what was measured and looked at with what was written, quantity by quantity.
 *
 *     same: |got − wanted| ≤ e     close: ≤ tolerance     off: past it, or a look that is another
 *
 * Where nothing was written the plan's own prediction stands in, so that a wrong head or a slip of the gauge shows. What
 * must be measured is so by the kind of work, wished or not: a reading that nothing is held against is enough then.
 * Gauge errors and tolerances are those of `checkRow`, common practice; the words of a look differ by more than capitals.
 *
 * @param question - kind of work, target, plan, readings (mm, g, degrees, points), looks wanted and seen, tolerances
 * @returns a row for each quantity wanted and measured and each look wanted and seen, what is missing, and the worst of it
 * @throws {DomainError} `quantity-out-of-range` when a reading or a wish cannot be
 * @throws {DomainError} `quantity-unreadable` when the kind of work, the club or a look is unknown
 * @see fixtures/published/finalChecks.json
 */
export function finalCheck(question: FinalCheckQuestion): FinalCheck {
  finiteNumbers(question, "question");
  oneOf(question.kind, orderKinds, "kind");
  const { kind, target, listed, measured, looks } = question;
  const rows = checkedQuantities.flatMap((quantity) => checked(question, quantity));
  const looked = lookRows(looks.wanted, looks.seen);
  const must = mustBeMeasured(kind, knownClub(target).club, { listed, wanted: (quantity) => wantedOf(question, quantity) !== null });
  const unmeasured = [...must.filter((quantity) => measured[quantity] === undefined), ...looked.unseen];
  const worst = worstVerdict([...rows, ...looked.rows]) ?? "same";
  return { rows, looks: looked.rows, unmeasured, overall: worst !== "off" && unmeasured.length > 0 ? "unmeasured" : worst };
}
