import { inRange } from "../quantity/inRange.ts";
import { type Grams, grams } from "../quantity/units.ts";

/** What lead, powder and screws can be dosed to: common practice, no source. */
export const DEFAULT_MASS_STEP_G = grams(0.5);

/** The nearest whole number of steps; the mass as it is where there is no step. */
export function inSteps(mass: Grams, step: Grams): Grams {
  const stepG = inRange(step, { field: "massStepG", unit: "g", min: 0, max: 50 });
  return stepG === 0 ? mass : grams(Math.round(mass / stepG) * stepG + 0);
}

/** Highest less lowest. */
export const spreadOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
