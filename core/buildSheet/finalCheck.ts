import { type CheckRow, checkRow, type Verdict, worstVerdict } from "../bag/checkRow.ts";
import { type CheckedQuantity, type CheckTolerances, checkedQuantities } from "../bag/checkTolerances.ts";
import { clubFamily } from "../kinds.ts";
import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import type { ClubPlan, Target } from "./plan.ts";

interface FinalCheckRow extends CheckRow {
  /** Written (or taken over), or only what the plan says such a club comes to. */
  readonly wantedFrom: "target" | "plan";
}

export interface FinalCheck {
  readonly rows: readonly FinalCheckRow[];
  /** What this kind of work must be measured in and was not. */
  readonly unmeasured: readonly CheckedQuantity[];
  /** The worst row; `unmeasured` while nothing that was wanted is measured, or anything that must be is not. */
  readonly overall: Verdict | "unmeasured";
}

interface FinalCheckQuestion {
  readonly target: Target;
  readonly plan: ClubPlan | null;
  readonly kind: "build" | "swap";
  readonly measured: Readonly<Partial<Record<CheckedQuantity, number>>>;
  readonly tolerances: CheckTolerances;
}

/** No club but a putter may be longer than 48 in: past it, length is no longer only a matter of feel. */
const LONGEST_CLUB_MM = 48 * 25.4;

const plannedValue = (plan: ClubPlan | null, quantity: CheckedQuantity): number | null => {
  if (plan === null) {
    return null;
  }
  const values: Readonly<Partial<Record<CheckedQuantity, number | null>>> = { ...plan.choice.attitude, ...plan.predicted, wraps: plan.wraps };
  return values[quantity] ?? null;
};

/** A swap checks loft, face and swing weight, a build its length too; lie in place of face where irons and wedges are bent. */
function mustBeMeasured(question: FinalCheckQuestion): readonly CheckedQuantity[] {
  const family = clubFamily(question.target.club);
  const isWood = family === "driver" || family === "fairway" || family === "hybrid";
  const angles: readonly CheckedQuantity[] = ["squaredLoftDeg", isWood ? "soledFaceDeg" : "seatedLieDeg"];
  return [...angles, "swingWeightPoints", ...(question.kind === "build" ? (["lengthMm"] as const) : [])];
}

function checked(question: FinalCheckQuestion, quantity: CheckedQuantity): FinalCheckRow | null {
  const { target, plan, measured, tolerances } = question;
  const wanted = target[quantity] ?? plannedValue(plan, quantity);
  const got = measured[quantity];
  if (wanted === null || got === undefined) {
    return null;
  }
  const row = checkRow(quantity, wanted, got, tolerances);
  const tooLong = quantity === "lengthMm" && got > LONGEST_CLUB_MM + 1e-9 && clubFamily(target.club) !== "putter";
  return { ...row, concerns: tooLong ? "conformity" : row.concerns, wantedFrom: target[quantity] === null ? "plan" : "target" };
}

/**
 * Compares what was measured with what was written, quantity by quantity.
 *
 * Where nothing was written the plan's own prediction stands in, so that a wrong head or a slip of the gauge shows.
 *
 * @param question - target, plan, kind of work, readings (mm, g, degrees, points) and tolerances
 * @returns a row for each quantity wanted and measured, what is still to be measured, and the worst of it
 * @throws {DomainError} `quantity-out-of-range` when a reading or a wish cannot be
 */
export function finalCheck(question: FinalCheckQuestion): FinalCheck {
  finiteNumbers(question, "question");
  const rows = checkedQuantities.flatMap((quantity) => checked(question, quantity) ?? []);
  const wanted = (quantity: CheckedQuantity) => question.target[quantity] ?? plannedValue(question.plan, quantity);
  const unmeasured = mustBeMeasured(question).filter((quantity) => wanted(quantity) !== null && !rows.some((row) => row.quantity === quantity));
  const worst = worstVerdict(rows);
  return { rows, unmeasured, overall: worst === "off" ? "off" : unmeasured.length > 0 || worst === null ? "unmeasured" : worst };
}
