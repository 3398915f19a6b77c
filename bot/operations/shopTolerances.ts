import { type CheckTolerances, comparedQuantities, defaultCheckTolerances } from "../../core/bag/checkTolerances.ts";
import { defaultSelectionTolerances, type SelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import { numbersSet } from "../../db/repositories/settings.ts";
import type { Reader } from "../../db/write.ts";

/** Where the two kinds of tolerances stand among the settings. */
export const tolerancePrefixes = { choosing: "tolerance.choosing", checking: "tolerance.checking" } as const;

/** How far off counts as one when heads are compared: the shop's own where the lead has set them. */
export function selectionTolerances(reader: Reader): SelectionTolerances {
  const set = numbersSet(reader, tolerancePrefixes.choosing);
  const entries = Object.entries(defaultSelectionTolerances).map(([name, value]) => [name, set.get(name) ?? value] as const);
  return Object.fromEntries(entries) as unknown as SelectionTolerances;
}

/** How far off is close in the final check and between twins: the shop's own where the lead has set them. */
export function checkTolerances(reader: Reader): CheckTolerances {
  const set = numbersSet(reader, tolerancePrefixes.checking);
  const entries = comparedQuantities.map((name) => {
    const { tolerance, ...others } = defaultCheckTolerances[name];
    return [name, { ...others, tolerance: set.get(name) ?? tolerance }] as const;
  });
  return Object.fromEntries(entries) as unknown as CheckTolerances;
}
