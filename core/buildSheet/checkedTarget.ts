import { inRange } from "../quantity/inRange.ts";
import type { Target } from "./plan.ts";
import { type AmountName, amountNames, targetLimits } from "./targetLimits.ts";

const units: readonly (readonly [ending: string, unit: string])[] = [
  ["Deg", "deg"],
  ["Mm", "mm"],
  ["Points", "points"],
  ["G", "g"],
];

const unitOf = (name: AmountName): string => units.find(([ending]) => name.endsWith(ending))?.[1] ?? "";

/**
 * A target every amount of which a club can have.
 *
 * @throws {DomainError} `quantity-out-of-range` when one of its numbers is not finite or no club's
 */
export function checkedTarget(target: Target): Target {
  for (const name of amountNames) {
    const value = target[name];
    if (value !== null) {
      inRange(value, { field: `target.${name}`, unit: unitOf(name), ...targetLimits[name] });
    }
  }
  return target;
}
