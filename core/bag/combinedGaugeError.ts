import { DomainError } from "../errors.ts";
import { inRange } from "../quantity/inRange.ts";

/**
 * How far so many readings may come apart by the gauge alone.
 *
 *     e = e₁ · √n
 *
 * Root of the sum of squares of equal, independent errors: one reading against a written value, or two readings against
 * each other. Two lofts read to ±1/8° differ by 0.18° without meaning it. What a gauge reads wrong every time drops
 * out only while both readings are taken on the same one.
 *
 * @param error - e₁ of one reading, in the unit of the quantity
 * @param readings - n, one or two
 * @returns e in the same unit
 * @throws {DomainError} `quantity-out-of-range` when the error is negative or not finite, or there are other than one or two readings
 * @see fixtures/published/gaugeError.json
 */
export function combinedGaugeError(error: number, readings: 1 | 2): number {
  const one = inRange(error, { field: "gaugeError", unit: "", min: 0, max: 1000 });
  if (readings !== 1 && readings !== 2) {
    throw new DomainError("quantity-out-of-range", { field: "readings", value: readings, unit: "", min: 1, max: 2 });
  }
  return one * Math.sqrt(readings);
}
