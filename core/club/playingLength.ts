import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";

/** A club's length beside the way it is read, for another way may differ by several mm. */
export interface PlayingLength {
  readonly lengthMm: Millimetres;
  /** Sole against a plane at 60° to the ground; from where the planes meet to the end of the cap, whatever the design lie. */
  readonly method: "60-degree plane";
}

/**
 * Playing length of a club whose bare shaft is cut: the way back from `bareCutLength`.
 *
 *     L = cut + boreToGround + cap
 *
 * Read with the sole against a 60° plane, from where the planes meet to the end of the cap. Exact as far as the bore
 * depth and the cap are measured; a ruler laid at the heel may read several mm else, so the method goes with the number.
 *
 * @param bareCut - bare shaft, tip to butt, in mm
 * @param boreToGround - bottom of the bore, or the sleeve's shaft stop, to the ground line along the shaft, in mm
 * @param cap - thickness of the grip cap in mm
 * @returns L in mm and the method
 * @throws {DomainError} `quantity-out-of-range` when a length is impossible
 * @see fixtures/published/shaftTrimming.json
 */
export function playingLength(bareCut: Millimetres, boreToGround: Millimetres, cap: Millimetres): PlayingLength {
  const cutMm = inRange(bareCut, { field: "bareCutMm", unit: "mm", min: 1, max: 2000 });
  const boreMm = inRange(boreToGround, { field: "boreToGroundMm", unit: "mm", min: 0, max: 200 });
  const capMm = inRange(cap, { field: "capMm", unit: "mm", min: 0, max: 50 });
  return { lengthMm: millimetres(cutMm + boreMm + capMm), method: "60-degree plane" };
}
