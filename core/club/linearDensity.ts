import { DomainError } from "../errors.ts";
import { inRange } from "../quantity/inRange.ts";
import type { Grams, Millimetres } from "../quantity/units.ts";

/** A shaft before it is cut. */
export interface RawShaft {
  readonly rawLengthMm: Millimetres;
  readonly rawMassG: Grams;
  readonly balanceFromTipMm: Millimetres;
}

/** Density a + b·u along the shaft, u from the tip, in g/mm and g/mm². */
export interface LinearDensity {
  readonly a: number;
  readonly b: number;
}

/**
 * The density of a shaft, changing evenly from tip to butt, that gives it its mass and its balance point.
 *
 *     λ(u) = a + b·u,   b = 12·m·(B − L/2)/L³,   a = m/L − b·L/2,   u from the tip
 *
 * Never negative for L/3 < B < 2L/3, and refused elsewhere. Stepped steel or a counterweighted butt is not so even.
 *
 * @param raw - L and B (from the tip) in mm, m in g
 * @returns a in g/mm, b in g/mm²
 * @throws {DomainError} `balance-outside-model` when B is not between L/3 and 2L/3
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/shaftTrimming.json
 */
export function linearDensity(raw: RawShaft): LinearDensity {
  const lengthMm = inRange(raw.rawLengthMm, { field: "rawLengthMm", unit: "mm", min: 1, max: 2000 });
  const massG = inRange(raw.rawMassG, { field: "rawMassG", unit: "g", min: Number.MIN_VALUE, max: 500 });
  const balanceMm = inRange(raw.balanceFromTipMm, { field: "balanceFromTipMm", unit: "mm" });
  const [minMm, maxMm] = [lengthMm / 3, (2 * lengthMm) / 3];
  if (balanceMm <= minMm || balanceMm >= maxMm) {
    throw new DomainError("balance-outside-model", { balanceFromTipMm: balanceMm, minMm, maxMm });
  }
  const b = (12 * massG * (balanceMm - lengthMm / 2)) / lengthMm ** 3;
  return { a: massG / lengthMm - (b * lengthMm) / 2, b };
}
