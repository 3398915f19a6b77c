import { inRange } from "../quantity/inRange.ts";
import { type Grams, grams, type KilogramSquareCentimetres, kilogramSquareCentimetres, type Millimetres, millimetres } from "../quantity/units.ts";
import { linearDensity, type RawShaft } from "./linearDensity.ts";

/** A shaft as cut. */
export interface TrimmedShaft {
  readonly lengthMm: Millimetres;
  readonly massG: Grams;
  readonly balanceFromTipMm: Millimetres;
  readonly balanceFromButtMm: Millimetres;
  /** About its own centre of mass, crosswise. */
  readonly ownInertiaKgCm2: KilogramSquareCentimetres;
}

const GRAM_SQUARE_MM_PER_KG_SQUARE_CM = 1e5;

/**
 * Mass and balance of a shaft after it is cut at the tip and at the butt.
 *
 *     m' = ∫ λ du,   B' = ∫ λ·u du / m' − t,   between u = t and u = L − c, u from the tip
 *
 * λ is `linearDensity`, which changes evenly along the shaft: holds only for L/3 < B < 2L/3, and not for stepped steel or a
 * counterweighted butt. There `trimmedByOffCuts` is nearer.
 *
 * @param raw - L and B (from the tip) in mm, m in g, before trimming
 * @param tipTrim - t in mm, cut off the tip
 * @param buttTrim - c in mm, cut off the butt
 * @returns length, mass, balance from either end in mm and inertia about its own centre in kg·cm²
 * @throws {DomainError} `balance-outside-model` when B is not between L/3 and 2L/3
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or nothing is left
 * @see fixtures/published/shaftTrimming.json
 */
export function trimmedShaft(raw: RawShaft, tipTrim: Millimetres, buttTrim: Millimetres): TrimmedShaft {
  const { a, b } = linearDensity(raw);
  const from = inRange(tipTrim, { field: "tipTrimMm", unit: "mm", min: 0, max: raw.rawLengthMm });
  const to = raw.rawLengthMm - inRange(buttTrim, { field: "buttTrimMm", unit: "mm", min: 0, max: raw.rawLengthMm });
  const lengthMm = inRange(to - from, { field: "trimmedLengthMm", unit: "mm", min: Number.MIN_VALUE });
  /** ∫ λ·uⁿ du over what is left. */
  const moment = (n: number) => (a * (to ** (n + 1) - from ** (n + 1))) / (n + 1) + (b * (to ** (n + 2) - from ** (n + 2))) / (n + 2);
  const massG = moment(0);
  const centreMm = moment(1) / massG;
  return {
    lengthMm: millimetres(lengthMm),
    massG: grams(massG),
    balanceFromTipMm: millimetres(centreMm - from),
    balanceFromButtMm: millimetres(to - centreMm),
    ownInertiaKgCm2: kilogramSquareCentimetres(Math.max(0, moment(2) - massG * centreMm ** 2) / GRAM_SQUARE_MM_PER_KG_SQUARE_CM),
  };
}
