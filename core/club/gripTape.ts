import { inRange } from "../quantity/inRange.ts";
import { type Grams, grams, type Millimetres, millimetres, type SwingWeightPoints } from "../quantity/units.ts";
import type { TapeLayers } from "./gripDiameter.ts";
import { pointsOfMass } from "./massAtPosition.ts";

/** Tape wound around the shaft over a length. */
export interface GripTape extends TapeLayers {
  readonly lengthMm: Millimetres;
  /** Mean diameter of the bare shaft under it. */
  readonly shaftMm: Millimetres;
  readonly grammageGPerM2: number;
}

interface GripTapeEffect {
  readonly massG: Grams;
  readonly swingWeightPoints: SwingWeightPoints;
}

const SQUARE_MM_PER_M2 = 1e6;

/**
 * What tape wound under a grip weighs, and what it does to the swing weight.
 *
 *     m = g · π · l · (n·d + n·(n − 1)·t)     Δp = m · (x − 14 in) / 49.6117 g·in
 *
 * Each layer lies on the one before; exact for whole layers. A spiral wrap that overlaps is written as a part of a layer more (half
 * over half: 2), good to t/4d of one layer, 0.3 %. Tape runs from 110 to 140 g/m², so weigh a metre of the roll: common practice, no source.
 *
 * @param tape - n layers, 0 to 100 and not whole only, of thickness t over length l on diameter d in mm, g in g/m²
 * @param centreFromCap - x, the middle of the wrap in mm from the end of the cap
 * @returns g, and points (negative above the fulcrum)
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/gripTape.json
 */
export function gripTape(tape: GripTape, centreFromCap: Millimetres): GripTapeEffect {
  const layers = inRange(tape.layers, { field: "layers", unit: "layers", min: 0, max: 100 });
  const layerMm = inRange(tape.layerMm, { field: "layerMm", unit: "mm", min: 0.001, max: 5 });
  const lengthMm = inRange(tape.lengthMm, { field: "tapeLengthMm", unit: "mm", min: 0, max: 1000 });
  const shaftMm = inRange(tape.shaftMm, { field: "shaftMm", unit: "mm", min: 1, max: 100 });
  const grammage = inRange(tape.grammageGPerM2, { field: "grammageGPerM2", unit: "g/m²", min: 1, max: 2000 });
  const fromCapMm = inRange(centreFromCap, { field: "centreFromCapMm", unit: "mm", min: 0, max: 2000 });
  const areaMm2 = Math.PI * lengthMm * (layers * shaftMm + layers * (layers - 1) * layerMm);
  const massG = grams((grammage * areaMm2) / SQUARE_MM_PER_M2);
  return { massG, swingWeightPoints: pointsOfMass(massG, millimetres(fromCapMm)) };
}
