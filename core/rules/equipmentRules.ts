import { faceRules } from "./faceRules.ts";
import { gripRules } from "./gripRules.ts";
import { headRules } from "./headRules.ts";
import { markingRules } from "./markingRules.ts";
import type { LimitRule, YesNoRule } from "./ruleTypes.ts";
import { wholeClubRules } from "./wholeClubRules.ts";
import { yesNoRules } from "./yesNoRules.ts";

const limits = [...wholeClubRules, ...gripRules, ...headRules, ...faceRules, ...markingRules] as const;

/** Every rule a single club can be held against, by the word the replies know it under. */
type ClubRuleCode = (typeof limits)[number]["code"] | (typeof yesNoRules)[number]["code"];
export type RuleCode = ClubRuleCode | "clubsInBag";

interface EquipmentRules {
  readonly limits: readonly LimitRule<ClubRuleCode>[];
  readonly yesNo: readonly YesNoRule<ClubRuleCode>[];
}

/**
 * The Equipment Rules as one table, each row with its rule number, edition and source. Inches of the rules in mm.
 *
 * An aid for those who build: only the governing bodies rule. Test tolerances are theirs, no building allowances.
 */
export const equipmentRules: EquipmentRules = { limits, yesNo: yesNoRules };
