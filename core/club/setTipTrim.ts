import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";

/** How the tip trim grows through a set of parallel-tipped shafts. */
interface TipTrimSteps {
  /** Off the tip of the longest club. */
  readonly firstMm: Millimetres;
  /** More off each next, shorter club; usually ½ in. */
  readonly stepMm: Millimetres;
}

/**
 * Tip trim of one club in a set of parallel-tipped shafts.
 *
 *     trim = first + place · step
 *
 * Exact sum. Soft-stepping one club is one place less, hard-stepping one place more; so a place may be a fraction.
 *
 * @param place - clubs down from the longest, which is 0
 * @param steps - first trim and step in mm
 * @returns off the tip, in mm
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or the trim falls below 0 mm
 * @see fixtures/published/tipTrims.json
 */
export function setTipTrim(place: number, steps: TipTrimSteps): Millimetres {
  const clubsDown = inRange(place, { field: "place", unit: "clubs", min: -14, max: 14 });
  const firstMm = inRange(steps.firstMm, { field: "firstMm", unit: "mm", min: 0, max: 200 });
  const stepMm = inRange(steps.stepMm, { field: "stepMm", unit: "mm", min: 0, max: 50 });
  return millimetres(inRange(firstMm + clubsDown * stepMm, { field: "tipTrimMm", unit: "mm", min: 0 }));
}
