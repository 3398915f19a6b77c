import { inRange } from "./inRange.ts";
import { inchesFromMm } from "./units.ts";

const SIXTEENTHS = 16;

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/**
 * A length in inches as a workshop reads it, to the nearest sixteenth in lowest terms: `45 1/4`, `1/2`, `45`.
 *
 * Rounding moves it by 1/32 in at most.
 *
 * @param mm - length in mm, negative for a shortening
 * @returns whole inches and fraction, without a unit
 * @throws {DomainError} `quantity-out-of-range` when it is not finite
 */
export function inchesAsFraction(mm: number): string {
  const sixteenths = Math.round(Math.abs(inchesFromMm(inRange(mm, { field: "length", unit: "mm" }))) * SIXTEENTHS);
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  const rest = sixteenths % SIXTEENTHS;
  const sign = mm < 0 && sixteenths > 0 ? "-" : "";
  if (rest === 0) {
    return `${sign}${whole}`;
  }
  const divisor = greatestCommonDivisor(rest, SIXTEENTHS);
  const fraction = `${rest / divisor}/${SIXTEENTHS / divisor}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
}
