import { inRange } from "../quantity/inRange.ts";
import type { SelectionTolerances } from "./selectionTolerances.ts";

/** Below it a tolerance would divide a deviation by nothing. */
const LEAST_TOLERANCE = 1e-6;

/**
 * Tolerances a deviation can be counted in.
 *
 * @throws {DomainError} `quantity-out-of-range` when one is not above 0, past 1000 or not finite
 */
export function checkedSelectionTolerances<T extends Partial<SelectionTolerances>>(tolerances: T): T {
  for (const [name, tolerance] of Object.entries(tolerances)) {
    inRange(tolerance, { field: `tolerances.${name}`, unit: "", min: LEAST_TOLERANCE, max: 1000 });
  }
  return tolerances;
}
