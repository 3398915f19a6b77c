import { inRange } from "../quantity/inRange.ts";
import { type Grams, grams, type KilogramSquareCentimetres, type Millimetres } from "../quantity/units.ts";
import { checkedComponents } from "./checkedComponents.ts";
import type { ClubComponent } from "./clubComponent.ts";
import { massForClubSum } from "./clubSums.ts";
import { FARTHEST_HEAD_MM, NEAREST_HEAD_MM } from "./headMassForSwingWeight.ts";

/** A head without its mass: where its centre lies, and its inertia about it; left out it is a point on the axis. */
interface HeadPlace {
  readonly fromCapMm: Millimetres;
  readonly fromAxisMm?: Millimetres;
  readonly ownInertiaKgCm2?: KilogramSquareCentimetres;
}

/**
 * The mass at the head that gives a club its inertia about the butt, everything else being what it is.
 *
 *     m = (I − I_cg − Σ (mᵢ·(xᵢ² + dᵢ²) + Iᵢ)) / (x² + d²)
 *
 * The head's inertia I_cg about its own centre is taken as fixed: true of mass put in at its centre, and off by
 * 0.03 % of the club's inertia when the whole head is heavier or lighter by 10 %. May be negative: then no head is light enough.
 *
 * @param target - I about the end of the cap in kg·cm², 1 to 20000
 * @param head - x along the shaft (400 to 2000) and d off it in mm, I_cg in kg·cm²
 * @param others - every part but the head
 * @returns g
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or the head is not well past the fulcrum
 * @see fixtures/published/pointMassClubs.json
 */
export function headMassForInertia(target: KilogramSquareCentimetres, head: HeadPlace, others: readonly ClubComponent[]): Grams {
  const wanted = inRange(target, { field: "inertiaKgCm2", unit: "kg·cm²", min: 1, max: 20_000 });
  inRange(head.fromCapMm, { field: "head fromCapMm", unit: "mm", min: NEAREST_HEAD_MM, max: FARTHEST_HEAD_MM });
  const place = { ...head, name: "head" };
  checkedComponents([{ ...place, massG: grams(0) }]);
  return grams(massForClubSum("inertia", wanted, place, checkedComponents(others)));
}
