import { expect } from "vitest";

/** Holds both sides of a bound: what is just accepted, and that a step beyond it, and no number at all, is refused. */
export function expectBounds(
  call: (value: number) => unknown,
  bounds: { readonly lowest?: number; readonly highest?: number; readonly step: number },
) {
  const { lowest, highest, step } = bounds;
  for (const nothing of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(() => call(nothing)).toThrow("quantity-out-of-range");
  }
  if (lowest !== undefined) {
    expect(() => call(lowest)).not.toThrow();
    expect(() => call(lowest - step)).toThrow("quantity-out-of-range");
  }
  if (highest !== undefined) {
    expect(() => call(highest)).not.toThrow();
    expect(() => call(highest + step)).toThrow("quantity-out-of-range");
  }
}

/** The call takes both bounds; it refuses a step outside and what is no finite number. */
export function refusedOutside(call: (value: number) => unknown, min: number, max: number): void {
  expectBounds(call, { lowest: min, highest: max, step: 1e-6 * Math.max(1, max - min) });
}
