import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import { inRange } from "../quantity/inRange.ts";
import { listOf } from "../quantity/listOf.ts";
import { type ClubChange, changesOf } from "./changesOf.ts";
import { type CheckTolerances, comparedQuantities, defaultCheckTolerances } from "./checkTolerances.ts";
import { type ClubComparison, compareClubs } from "./compareClubs.ts";
import { defaultGaugeErrors, type GaugeErrors } from "./gaugeErrors.ts";
import { defaultPartCosts, type NamedQuantity, namedQuantities } from "./partCosts.ts";
import type { SpecClub } from "./specClub.ts";

/** How one twin stands to the gamer. */
export interface RankedTwin<T> {
  readonly twin: T;
  readonly comparison: ClubComparison;
  /** What a player would notice; a comparison is worth most when one thing changes. */
  readonly changes: readonly ClubChange[];
  /** In squared tolerances: lower is nearer, 0 is alike in everything the gamer has on record. */
  readonly score: number;
  /** How many things the gamer has on record that could not be held against this twin. */
  readonly unknownCount: number;
}

/** How clubs are held against each other; what is left out is the default. */
interface TwinRules {
  readonly tolerances?: CheckTolerances;
  readonly gaugeErrors?: GaugeErrors;
  readonly partCosts?: Readonly<Record<NamedQuantity, number>>;
}

const MOST_TWINS = 1000;
/** Scores nearer to each other than this are one. */
const SCORE_STEP = 1e-9;
/** What a reading costs that the twin has not got: as much as being off by its tolerance. */
const UNKNOWN_READING = 1;

const byText = (one: string, other: string) => (one < other ? -1 : Number(one > other));

/** A counted quantity has no tolerance: each one more or less is a step. */
const inTolerances = ({ delta, tolerance }: { readonly delta: number; readonly tolerance: number }) => delta / (tolerance > 0 ? tolerance : 1);

function ranked<T extends { readonly club: SpecClub }>(gamer: SpecClub, twin: T, rules: Required<TwinRules>): RankedTwin<T> {
  const { tolerances, gaugeErrors, partCosts } = rules;
  const comparison = compareClubs(gamer, twin.club, tolerances, gaugeErrors);
  const { rows, differing, unknown, incomparable } = comparison;
  const lacking = new Set<string>([...unknown.filter((name) => (gamer[name] ?? null) !== null), ...incomparable]);
  const readings = rows.reduce((total, row) => total + inTolerances(row) ** 2, 0);
  const unread = comparedQuantities.filter((name) => lacking.has(name)).length * UNKNOWN_READING;
  const parts = namedQuantities.filter((name) => differing.includes(name) || lacking.has(name)).reduce((total, name) => total + partCosts[name], 0);
  return { twin, comparison, changes: changesOf(comparison), score: readings + unread + parts, unknownCount: lacking.size };
}

/**
 * Finished clubs by how near each is to the gamer, the nearest first.
 *
 *     score = Σ ( (twin − gamer) / tolerance )² + Σ cost of each part that differs
 *
 * What the gamer has on record and the twin has not, or measured otherwise, counts too, so that no twin wins by being
 * unknown: a reading as one tolerance off, a part as one that differs. A count without a tolerance counts in ones.
 * Among equals the twin with less unknown comes first, then the serial of the head. The order of the list changes
 * nothing. The costs of parts are common practice with no source.
 *
 * @param gamer - the club to be like: angles in degrees, lengths in mm, masses in g, swing weight in points
 * @param twins - finished clubs, each with whatever else is known of it; up to 1000
 * @param rules - tolerances, gauge errors, costs of parts in squared tolerances
 * @returns every twin with its comparison, what changes, its score in squared tolerances and the count of what is unknown
 * @throws {DomainError} `quantity-out-of-range` when a number of a club, a tolerance, an error or a cost is impossible
 * @throws {DomainError} `list-of-wrong-size` when there are more than 1000
 * @see fixtures/published/gaugeError.json
 */
export function rankTwins<T extends { readonly club: SpecClub }>(
  gamer: SpecClub,
  twins: readonly T[],
  rules: TwinRules = {},
): readonly RankedTwin<T>[] {
  finiteNumbers([gamer, rules], "question");
  listOf(twins, { field: "twins", min: 0, max: MOST_TWINS });
  const { tolerances = defaultCheckTolerances, gaugeErrors = defaultGaugeErrors, partCosts = defaultPartCosts } = rules;
  for (const name of namedQuantities) {
    inRange(partCosts[name], { field: `${name} cost`, unit: "", min: 0, max: 1e6 });
  }
  /** Without a twin the gamer and the rules are looked at all the same. */
  compareClubs(gamer, gamer, tolerances, gaugeErrors);
  const scored = twins.map((twin) => ranked(gamer, twin, { tolerances, gaugeErrors, partCosts }));
  const step = ({ score }: RankedTwin<T>) => Math.round(score / SCORE_STEP);
  return scored.sort(
    (one, other) =>
      step(one) - step(other) ||
      one.unknownCount - other.unknownCount ||
      byText(one.twin.club.headSerial ?? "", other.twin.club.headSerial ?? "") ||
      byText(JSON.stringify(one.twin), JSON.stringify(other.twin)),
  );
}
