import { checkedClub } from "./checkedClub.ts";
import { type CheckRow, checkRow, type Verdict, worstVerdict } from "./checkRow.ts";
import { type CheckTolerances, type ComparedQuantity, comparedQuantities } from "./checkTolerances.ts";
import { defaultGaugeErrors, type GaugeErrors } from "./gaugeErrors.ts";
import { type NamedQuantity, namedQuantities } from "./partCosts.ts";
import type { SpecClub } from "./specClub.ts";

export interface ClubComparison {
  readonly rows: readonly CheckRow<ComparedQuantity>[];
  /** Parts and settings known on both sides that are not the same. */
  readonly differing: readonly NamedQuantity[];
  /** Quantities known on one side only. */
  readonly unknown: readonly (ComparedQuantity | NamedQuantity)[];
  /** Known on both sides but measured differently: a frequency of another, or of an unknown, clamp set-up. */
  readonly incomparable: readonly ComparedQuantity[];
  readonly overall: Verdict | "unmeasured";
}

/** Whether two readings of a quantity mean the same thing. */
const comparable = (gamer: SpecClub, twin: SpecClub, quantity: ComparedQuantity): boolean =>
  quantity !== "frequencyCpm" || ((gamer.frequencySetUp ?? null) !== null && gamer.frequencySetUp === twin.frequencySetUp);

/**
 * How near one club is to another, such as a backup to its gamer.
 *
 *     same: |twin − gamer| ≤ e·√2     close: ≤ tolerance     off: past it
 *
 * The rule of the final check with two readings in place of one: two lofts read to ±1/8° differ by 0.18° without meaning
 * it. Angles compare on one gauge only, frequencies at one clamp set-up only.
 *
 * @param gamer - the club to be like
 * @param twin - the club that should be like it
 * @param tolerances - how far is close, and what each concerns
 * @param gaugeErrors - of one reading of each quantity
 * @returns rows with delta = twin − gamer, parts that differ, what only one of them has on record, what does not compare
 * @throws {DomainError} `quantity-out-of-range` when a number of either club, a tolerance or an error is impossible
 * @see fixtures/published/gaugeError.json
 */
export function compareClubs(
  gamer: SpecClub,
  twin: SpecClub,
  tolerances: CheckTolerances,
  gaugeErrors: GaugeErrors = defaultGaugeErrors,
): ClubComparison {
  const [like, made] = [checkedClub(gamer), checkedClub(twin)];
  const isKnown = (club: SpecClub, name: ComparedQuantity | NamedQuantity) => (club[name] ?? null) !== null;
  const gauge = { readings: 2, errors: gaugeErrors } as const;
  const rows = comparedQuantities.flatMap((quantity) => {
    const [wanted, got] = [like[quantity] ?? null, made[quantity] ?? null];
    return wanted === null || got === null || !comparable(like, made, quantity) ? [] : [checkRow(quantity, wanted, got, tolerances, gauge)];
  });
  const differing = namedQuantities.filter((name) => isKnown(like, name) && isKnown(made, name) && like[name] !== made[name]);
  return {
    rows,
    differing,
    unknown: [...comparedQuantities, ...namedQuantities].filter((name) => isKnown(like, name) !== isKnown(made, name)),
    incomparable: comparedQuantities.filter((name) => isKnown(like, name) && isKnown(made, name) && !comparable(like, made, name)),
    overall: differing.length > 0 ? "off" : (worstVerdict(rows) ?? "unmeasured"),
  };
}
