import { DomainError } from "../errors.ts";
import { inRange } from "../quantity/inRange.ts";
import { FULCRUM_MM, inchOuncesFromPoints } from "../quantity/swingWeightScale.ts";
import { GRAMS_PER_OUNCE, type Grams, grams, type Millimetres, MM_PER_INCH, type SwingWeightPoints } from "../quantity/units.ts";
import type { ClubComponent } from "./assembledClub.ts";

/**
 * The mass at the head that gives a club its swing weight, everything else being what it is.
 *
 *     m = (S − Σ mᵢ·(xᵢ − 14 in)) / (x_head − 14 in)
 *
 * Exact for masses on one axis. May be negative: then no head is light enough.
 *
 * @param target - swing weight in points, D0 = 0
 * @param headFromCap - x_head, the head's centre of mass in mm from the end of the grip cap
 * @param others - every part but the head
 * @returns g
 * @throws {DomainError} `quantity-out-of-range` when a value is not finite or the head is not past the fulcrum
 * @see fixtures/published/pointMassClubs.json
 */
export function headMassForSwingWeight(target: SwingWeightPoints, headFromCap: Millimetres, others: readonly ClubComponent[]): Grams {
  const headFromCapMm = inRange(headFromCap, { field: "headFromCapMm", unit: "mm" });
  if (headFromCapMm <= FULCRUM_MM) {
    throw new DomainError("quantity-out-of-range", { field: "headFromCapMm", value: headFromCapMm, unit: "mm", min: FULCRUM_MM });
  }
  const wantedGramMm = inchOuncesFromPoints(target) * GRAMS_PER_OUNCE * MM_PER_INCH;
  const othersGramMm = others.reduce((total, part) => total + part.massG * (part.fromCapMm - FULCRUM_MM), 0);
  return grams(inRange((wantedGramMm - othersGramMm) / (headFromCapMm - FULCRUM_MM), { field: "headMassG", unit: "g" }));
}
