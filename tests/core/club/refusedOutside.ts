import { expect } from "vitest";

/** The call takes both bounds and everything a step inside; it refuses a step outside and what is no finite number. */
export function refusedOutside(call: (value: number) => unknown, min: number, max: number): void {
  const step = 1e-6 * Math.max(1, max - min);
  for (const value of [min, max]) {
    expect(() => call(value), `${value}`).not.toThrow();
  }
  for (const value of [min - step, max + step, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(() => call(value), `${value}`).toThrow("quantity-out-of-range");
  }
}
