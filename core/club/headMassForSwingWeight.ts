import { inRange } from "../quantity/inRange.ts";
import { inchOuncesFromPoints } from "../quantity/swingWeightScale.ts";
import { GRAMS_PER_OUNCE, type Grams, grams, type Millimetres, MM_PER_INCH, type SwingWeightPoints } from "../quantity/units.ts";
import { checkedComponents } from "./checkedComponents.ts";
import type { ClubComponent } from "./clubComponent.ts";
import { massForClubSum } from "./clubSums.ts";

/** Past the fulcrum by far: a club is at least 18 in long, its head at the end of it. */
export const NEAREST_HEAD_MM = 400;
export const FARTHEST_HEAD_MM = 2000;

/**
 * The mass at the head that gives a club its swing weight, everything else being what it is.
 *
 *     m = (S − Σ mᵢ·(xᵢ − 14 in)) / (x_head − 14 in)
 *
 * Exact for masses on one axis. May be negative: then no head is light enough.
 *
 * @param target - swing weight in points, D0 = 0, 200 either way
 * @param headFromCap - x_head, the head's centre of mass in mm from the end of the grip cap, 400 to 2000
 * @param others - every part but the head
 * @returns g
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or the head is not well past the fulcrum
 * @see fixtures/published/pointMassClubs.json
 */
export function headMassForSwingWeight(target: SwingWeightPoints, headFromCap: Millimetres, others: readonly ClubComponent[]): Grams {
  inRange(headFromCap, { field: "headFromCapMm", unit: "mm", min: NEAREST_HEAD_MM, max: FARTHEST_HEAD_MM });
  inRange(target, { field: "swingWeightPoints", unit: "points", min: -200, max: 200 });
  const wantedGramMm = inchOuncesFromPoints(target) * GRAMS_PER_OUNCE * MM_PER_INCH;
  return grams(massForClubSum("swing-weight", wantedGramMm, { name: "head", fromCapMm: headFromCap }, checkedComponents(others)));
}
