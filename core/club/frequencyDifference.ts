import { type CyclesPerMinute, cyclesPerMinute } from "../quantity/units.ts";
import { checkedReading, type FrequencyReading, type FrequencySetUp } from "./frequencySetUp.ts";
import { sameSetUp } from "./sameSetUp.ts";

type FrequencyDifference =
  | { readonly kind: "compared"; readonly differenceCpm: CyclesPerMinute }
  | { readonly kind: "refused"; readonly differs: readonly (keyof FrequencySetUp)[] };

/**
 * How much faster one reading is than a reference, when both are of one set-up.
 *
 *     Δ = f − f_ref
 *
 * Exact; two readings of ±1 cpm differ by ±1.4. Across set-ups the difference is the machine's and not the shaft's: refused.
 *
 * @param reading - f in cpm with its set-up
 * @param reference - f_ref in cpm with its set-up
 * @returns Δ in cpm, positive when the reading is the stiffer, or the fields of the set-up that differ
 * @throws {DomainError} `quantity-out-of-range` when a number of either is impossible
 * @see fixtures/published/frequencySetUps.json
 */
export function frequencyDifference(reading: FrequencyReading, reference: FrequencyReading): FrequencyDifference {
  const differenceCpm = checkedReading(reading).cpm - checkedReading(reference).cpm;
  const comparison = sameSetUp(reading.setUp, reference.setUp);
  return comparison.kind === "same" ? { kind: "compared", differenceCpm: cyclesPerMinute(differenceCpm) } : comparison;
}
