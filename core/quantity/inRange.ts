import { DomainError } from "../errors.ts";

interface Limits {
  readonly field: string;
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
}

/**
 * A number that is finite and within its limits, both included.
 *
 * @param value - the number as it came
 * @param limits - its name, its unit and the bounds that apply
 * @returns the same number
 * @throws {DomainError} `quantity-out-of-range` when it is NaN, infinite, below `min` or above `max`
 */
export function inRange(value: number, limits: Limits): number {
  const low = limits.min ?? Number.NEGATIVE_INFINITY;
  const high = limits.max ?? Number.POSITIVE_INFINITY;
  if (!Number.isFinite(value) || value < low || value > high) {
    throw new DomainError("quantity-out-of-range", { ...limits, value });
  }
  return value;
}
