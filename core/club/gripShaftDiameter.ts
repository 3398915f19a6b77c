import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";

/** The butt of a shaft as cut: of one diameter at first, then thinner at an even rate. */
export interface ShaftButt {
  readonly diameterMm: Millimetres;
  /** How far from the end the diameter stays the same. */
  readonly parallelMm: Millimetres;
  /** How much the diameter loses over each 100 mm after that. */
  readonly taperPer100Mm: Millimetres;
}

/**
 * Diameter of the bare shaft at a place under the grip.
 *
 *     d = b − k · max(0, x − cap − p) / 100
 *
 * Straight taper; steps of a steel shaft begin below the grip. A caliper on the bare shaft is better than any table.
 *
 * @param butt - b, p and k in mm
 * @param fromCap - x in mm from the end of the grip cap
 * @param cap - thickness of the cap in mm
 * @returns mm
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or the place is not on the shaft
 * @see tests/core/club/gripShaftDiameter.test.ts: equal steps down a straight taper lose equal diameters
 */
export function gripShaftDiameter(butt: ShaftButt, fromCap: Millimetres, cap: Millimetres): Millimetres {
  const diameterMm = inRange(butt.diameterMm, { field: "buttDiameterMm", unit: "mm", min: 1, max: 100 });
  const parallelMm = inRange(butt.parallelMm, { field: "parallelMm", unit: "mm", min: 0, max: 2000 });
  const taper = inRange(butt.taperPer100Mm, { field: "taperPer100Mm", unit: "mm", min: 0, max: 10 });
  const capMm = inRange(cap, { field: "capMm", unit: "mm", min: 0, max: 50 });
  const fromButtMm = inRange(fromCap, { field: "fromCapMm", unit: "mm", min: capMm, max: 2000 }) - capMm;
  const lostMm = (taper * Math.max(0, fromButtMm - parallelMm)) / 100;
  return millimetres(inRange(diameterMm - lostMm, { field: "shaftDiameterMm", unit: "mm", min: 1 }));
}
