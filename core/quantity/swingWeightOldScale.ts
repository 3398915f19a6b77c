import { inRange } from "./inRange.ts";
import { checkedInchOunces } from "./swingWeightScale.ts";
import { GRAMS_PER_OUNCE, type Grams, type InchOunces, inchOunces } from "./units.ts";

/** How much nearer to the butt the old scale's fulcrum lies: 12 inches in place of 14. */
const NEARER_IN = 2;

/** 2·M in in-oz. */
const shiftOf = (totalMass: Grams): number =>
  (NEARER_IN * inRange(totalMass, { field: "totalMassG", unit: "g", min: 0, max: 5000 })) / GRAMS_PER_OUNCE;

/**
 * What the old 12-inch scale reads of a club whose moment on the 14-inch scale is known.
 *
 *     S₁₂ = S₁₄ + 2 in · M
 *
 * Exact by the definition of both scales. Needs the total mass: no letter of one scale belongs to a letter of the other.
 *
 * @param moment - S₁₄ in in-oz
 * @param totalMass - M of the whole club in g, 0 to 5000
 * @returns in-oz about 12 in
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/pointMassClubs.json
 */
export function swingWeightOldScale(moment: InchOunces, totalMass: Grams): InchOunces {
  return inchOunces(checkedInchOunces(moment) + shiftOf(totalMass));
}

/**
 * The moment on the 14-inch scale of a club read on the old 12-inch scale.
 *
 *     S₁₄ = S₁₂ − 2 in · M
 *
 * Exact by the definition of both scales.
 *
 * @param oldMoment - S₁₂ in in-oz about 12 in
 * @param totalMass - M of the whole club in g, 0 to 5000
 * @returns in-oz about 14 in
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/pointMassClubs.json
 */
export function inchOuncesFromOldScale(oldMoment: InchOunces, totalMass: Grams): InchOunces {
  return inchOunces(checkedInchOunces(oldMoment) - shiftOf(totalMass));
}
