import { listOf } from "../quantity/listOf.ts";
import type { ClubFacts } from "./clubFacts.ts";
import { type ClubFindings, clubFindings, type Finding } from "./clubFindings.ts";
import { ruleSources } from "./ruleSources.ts";
import type { LocalRule } from "./ruleTypes.ts";

/** What was found of the bag as a whole, and of each club in its order. */
interface BagFindings {
  readonly findings: readonly Finding[];
  readonly clubs: readonly ClubFindings[];
  readonly ruledBy: "governingBodiesOnly";
}

const MOST_CLUBS = 14;
/** A bag with more is a rack. */
const MOST_LISTED = 50;

const tooMany = (clubs: number): Finding => ({
  code: "clubsInBag",
  rule: "Rule 4.1b(1)",
  edition: ruleSources.clubCount.edition,
  quantity: "clubs",
  measured: clubs,
  limit: MOST_CLUBS,
  unit: "",
  tolerance: null,
  withinTestTolerance: false,
  severity: "warning",
  source: ruleSources.clubCount,
  fromMemory: null,
});

/**
 * Whether a bag holds more clubs than a round may be started with, and what is found of each.
 *
 *     a finding when clubs > 14
 *
 * Exact for the count; parts of a broken club are no club. Only the governing bodies rule.
 *
 * @param clubs - those to be carried, as far as they are known
 * @param adopted - the Model Local Rules the committee has adopted
 * @returns findings of the bag and of each club, in the order given
 * @throws {DomainError} as `clubFindings`, and `list-of-wrong-size` when there are more than 50 clubs
 * @see fixtures/published/equipmentRules.json
 */
export function bagFindings(clubs: readonly ClubFacts[], adopted: readonly LocalRule[]): BagFindings {
  listOf(clubs, { field: "clubs", min: 0, max: MOST_LISTED });
  return {
    findings: clubs.length > MOST_CLUBS ? [tooMany(clubs.length)] : [],
    clubs: clubs.map((club) => clubFindings(club, adopted)),
    ruledBy: "governingBodiesOnly",
  };
}
