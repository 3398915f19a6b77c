import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";

/**
 * Length of the bare shaft, tip to butt, that gives a club its playing length.
 *
 *     cut = L − boreToGround − cap
 *
 * L is read with the sole against a 60° plane, from where the planes meet to the end of the cap. Exact as far as the
 * bore depth and the cap are measured.
 *
 * @param playingLength - L in mm
 * @param boreToGround - bottom of the bore, or the sleeve's shaft stop, to the ground line along the shaft, in mm
 * @param cap - thickness of the grip cap in mm
 * @returns mm
 * @throws {DomainError} `quantity-out-of-range` when a length is impossible or nothing is left to cut
 * @see fixtures/published/shaftTrimming.json
 */
export function bareCutLength(playingLength: Millimetres, boreToGround: Millimetres, cap: Millimetres): Millimetres {
  const lengthMm = inRange(playingLength, { field: "lengthMm", unit: "mm", min: 0, max: 2000 });
  const boreMm = inRange(boreToGround, { field: "boreToGroundMm", unit: "mm", min: 0, max: 200 });
  const capMm = inRange(cap, { field: "capMm", unit: "mm", min: 0, max: 50 });
  return millimetres(inRange(lengthMm - boreMm - capMm, { field: "bareCutMm", unit: "mm", min: Number.MIN_VALUE }));
}
