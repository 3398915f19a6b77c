import { inRange } from "../quantity/inRange.ts";
import { GRAM_MM_PER_POINT } from "../quantity/swingWeightScale.ts";
import { type Degrees, type Grams, type Millimetres, type SwingWeightPoints, swingWeightPoints } from "../quantity/units.ts";

/**
 * How far bending the lie moves the swing weight: a flatter head lies farther from the hands.
 *
 *     Δp = −m·d·tan(ΔL) / 49.6117 g·in
 *
 * The head turned about the foot of its centre on the shaft; the bend's own place moves it by a second-order part, about
 * 0.03 points at 4°. Two published rules, 4° and 3° a point, read about double; an iron of 270 g and 36 mm takes 7.4°.
 *
 * @param headMass - m in g, 1 to 2000
 * @param fromAxis - d from the head's centre to the shaft axis in mm, 0 to 200
 * @param lieChange - ΔL in degrees, upright positive, 10 either way
 * @returns points, positive when flatter
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @see fixtures/published/lieChangeSwingWeight.json
 */
export function swingWeightOfLieChange(headMass: Grams, fromAxis: Millimetres, lieChange: Degrees): SwingWeightPoints {
  const massG = inRange(headMass, { field: "headMassG", unit: "g", min: 1, max: 2000 });
  const fromAxisMm = inRange(fromAxis, { field: "headFromAxisMm", unit: "mm", min: 0, max: 200 });
  const changeDeg = inRange(lieChange, { field: "lieChangeDeg", unit: "deg", min: -10, max: 10 });
  return swingWeightPoints((-massG * fromAxisMm * Math.tan((changeDeg * Math.PI) / 180)) / GRAM_MM_PER_POINT);
}
