import { checkedSetUp, type FrequencySetUp } from "./frequencySetUp.ts";

type SetUpComparison = { readonly kind: "same" } | { readonly kind: "refused"; readonly differs: readonly (keyof FrequencySetUp)[] };

/** Each moves a reading by 0.4 cpm at most, the plane by 1.1 midway between planes 12 cpm apart and by 0.2 near one. */
const WITHIN = { clampMm: 1, tipMassG: 0.5, tipMassBeyondTipMm: 1, tipMassInertiaKgCm2: 1, planeDeg: 5 };
const HALF_TURN_DEG = 180;

/** Planes half a turn apart are one plane; a plane noted once only is not known to be the same. */
function samePlane(one: number | undefined, other: number | undefined): boolean {
  if (one === undefined || other === undefined) {
    return one === other;
  }
  const apartDeg = Math.abs(one - other);
  return Math.min(apartDeg, HALF_TURN_DEG - apartDeg) <= WITHIN.planeDeg;
}

/** A detail of the tip mass that one side did not note is taken to be the same. */
const near = (one: number | undefined, other: number | undefined, within: number) =>
  one === undefined || other === undefined || Math.abs(one - other) <= within;

/**
 * Whether two frequencies may be compared: only readings of one set-up may.
 *
 *     |clamp₁ − clamp₂| ≤ 1 mm,   |M₁ − M₂| ≤ 0.5 g,   same grip on or off,   same plane within 5°
 *
 * The distances let through move a reading by 0.4 cpm each at most, the plane by 1.1 midway between two planes 12 cpm
 * apart; a bench agrees with itself to 2 cpm. Centre and inertia of the tip mass count, within 1 mm and 1 kg·cm², when both sides noted them.
 *
 * @param one - a set-up
 * @param other - the one it is held against
 * @returns that they are the same, or every field that differs
 * @throws {DomainError} `quantity-out-of-range` when a number of either is impossible
 * @see fixtures/published/frequencySetUps.json
 */
export function sameSetUp(one: FrequencySetUp, other: FrequencySetUp): SetUpComparison {
  const [a, b] = [checkedSetUp(one), checkedSetUp(other)];
  const same: Required<Record<keyof FrequencySetUp, boolean>> = {
    clampMm: near(a.clampMm, b.clampMm, WITHIN.clampMm),
    tipMassG: near(a.tipMassG, b.tipMassG, WITHIN.tipMassG),
    gripOn: a.gripOn === b.gripOn,
    planeDeg: samePlane(a.planeDeg, b.planeDeg),
    tipMassBeyondTipMm: near(a.tipMassBeyondTipMm, b.tipMassBeyondTipMm, WITHIN.tipMassBeyondTipMm),
    tipMassInertiaKgCm2: near(a.tipMassInertiaKgCm2, b.tipMassInertiaKgCm2, WITHIN.tipMassInertiaKgCm2),
  };
  const differs = (Object.keys(same) as (keyof FrequencySetUp)[]).filter((field) => !same[field]);
  return differs.length === 0 ? { kind: "same" } : { kind: "refused", differs };
}
