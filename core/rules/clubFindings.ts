import { listOf } from "../quantity/listOf.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { type ClubFacts, checkedClubFacts, type Observation } from "./clubFacts.ts";
import { equipmentRules, type RuleCode } from "./equipmentRules.ts";
import { type RuleQuantity, ruleQuantities } from "./ruleQuantities.ts";
import { type LimitRule, type LocalRule, localRules, type RuleSource, type YesNoRule } from "./ruleTypes.ts";

/** One rule a club is not within, as facts; the words are the replies'. */
export interface Finding {
  readonly code: RuleCode;
  readonly rule: string;
  readonly edition: string;
  readonly quantity: RuleQuantity | Observation | "clubs";
  readonly measured: number | boolean;
  readonly limit: number | boolean;
  readonly unit: string;
  readonly tolerance: number | null;
  /** Past the limit by no more than the ruling bodies' test forgives: still nothing to build to. */
  readonly withinTestTolerance: boolean;
  readonly severity: "warning";
  readonly source: RuleSource;
  readonly fromMemory: "limit" | "tolerance" | null;
}

/** What was found, what could not be looked at, and whose ruling counts. */
export interface ClubFindings {
  readonly findings: readonly Finding[];
  /** Quantities the rules ask of such a club that were not measured. */
  readonly notChecked: readonly (RuleQuantity | Observation)[];
  readonly ruledBy: "governingBodiesOnly";
}

type Row = LimitRule<RuleCode> | YesNoRule<RuleCode>;
type Quantities = ReturnType<typeof ruleQuantities>;

/** Far below what any gauge reads: so that 46 in converted on two ways is 46 in. */
const SLACK = 1e-9;

const applies = (row: Row, club: ClubFacts, adopted: readonly LocalRule[]): boolean =>
  row.families.includes(club.family) &&
  (row.localRule === undefined || adopted.includes(row.localRule)) &&
  (row.onlyIf === undefined || club[row.onlyIf] === true) &&
  (row.unless === undefined || club[row.unless] !== true);

/** Whether the loft a row asks for is there; null when the loft is not known. */
function loftAsked({ loftDeg }: LimitRule, loft: number | null): boolean | null {
  if (loftDeg === undefined) return true;
  if (loft === null) return null;
  return loft >= (loftDeg.min ?? loft) - SLACK && loft <= (loftDeg.max ?? loft) + SLACK;
}

function basis(row: Row) {
  const { code, rule, source } = row;
  return { code, rule, edition: source.edition, severity: "warning" as const, source, fromMemory: row.fromMemory ?? null };
}

function limitFinding(row: LimitRule<RuleCode>, measured: number): Finding | null {
  const allowed = row.exclusive === true ? -SLACK : SLACK;
  const past = (by: number | undefined): by is number => by !== undefined && by > allowed;
  const below = row.min === undefined ? undefined : row.min - measured;
  const above = row.max === undefined ? undefined : measured - row.max;
  const [excess, limit] = past(below) ? [below, row.min] : [above, row.max];
  if (!past(excess) || limit === undefined) return null;
  const tolerance = row.tolerance ?? null;
  const { quantity, unit } = row;
  return { ...basis(row), quantity, measured, limit, unit, tolerance, withinTestTolerance: tolerance !== null && excess <= tolerance + SLACK };
}

function yesNoFinding(row: YesNoRule<RuleCode>, measured: boolean): Finding | null {
  const { observation: quantity, mustBe: limit } = row;
  return measured === limit ? null : { ...basis(row), quantity, measured, limit, unit: "", tolerance: null, withinTestTolerance: false };
}

type Looked = { readonly finding: Finding | null } | { readonly notChecked: RuleQuantity | Observation };

function lookedAt(row: LimitRule<RuleCode>, quantities: Quantities): Looked | null {
  const asked = loftAsked(row, quantities.squaredLoftDeg ?? null);
  if (asked === false) return null;
  const measured = quantities[row.quantity] ?? null;
  return asked === null || measured === null ? { notChecked: row.quantity } : { finding: limitFinding(row, measured) };
}

function seen(row: YesNoRule<RuleCode>, club: ClubFacts): Looked {
  const measured = club[row.observation] ?? null;
  return measured === null ? { notChecked: row.observation } : { finding: yesNoFinding(row, measured) };
}

/**
 * Which of the Equipment Rules one club is not within, as far as it was measured.
 *
 *     a finding when  measured > max  or  measured < min   (a bound itself conforms, unless the rule says "less than")
 *
 * Compared to 1e-9 of the unit, far below any gauge. A finding is a warning to those who build: only the governing bodies
 * rule. A test tolerance is told and never granted: 46.01 in is found under a 46-inch local rule.
 *
 * @param club - its family and whatever is known of it, lengths in mm, angles in degrees, areas in mm², volume in cm³,
 *   inertia in kg·cm², face time in µs
 * @param adopted - the Model Local Rules the committee has adopted
 * @returns findings in the order of the table, and the quantities that were not measured
 * @throws {DomainError} `quantity-out-of-range` when a reading is no club's, `quantity-unreadable` when the family or a local
 *   rule is unknown, `list-of-wrong-size` when there are more local rules than there are
 * @see fixtures/published/equipmentRules.json
 */
export function clubFindings(club: ClubFacts, adopted: readonly LocalRule[]): ClubFindings {
  const quantities = ruleQuantities(checkedClubFacts(club));
  for (const rule of listOf(adopted, { field: "localRules", min: 0, max: localRules.length })) oneOf(rule, localRules, "localRules");
  const looked = [
    ...equipmentRules.limits.filter((row) => applies(row, club, adopted)).map((row) => lookedAt(row, quantities)),
    ...equipmentRules.yesNo.filter((row) => applies(row, club, adopted)).map((row) => seen(row, club)),
  ].filter((one) => one !== null);
  return {
    findings: looked.flatMap((one) => ("finding" in one && one.finding !== null ? [one.finding] : [])),
    notChecked: [...new Set(looked.flatMap((one) => ("notChecked" in one ? [one.notChecked] : [])))],
    ruledBy: "governingBodiesOnly",
  };
}
