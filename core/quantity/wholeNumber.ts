import { DomainError } from "../errors.ts";
import { inRange } from "./inRange.ts";

/**
 * A whole number within its limits, both included: a count, a seed.
 *
 * @param value - the number as it came
 * @param limits - its name and its bounds
 * @returns the same number
 * @throws {DomainError} `quantity-out-of-range` when it is not finite, not whole, below `min` or above `max`
 */
export function wholeNumber(value: number, limits: { readonly field: string; readonly min: number; readonly max: number }): number {
  if (!Number.isInteger(inRange(value, { ...limits, unit: "" }))) {
    throw new DomainError("quantity-out-of-range", { ...limits, unit: "", value });
  }
  return value;
}
