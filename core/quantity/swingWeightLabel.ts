import { inRange } from "./inRange.ts";
import { HIGHEST_POINTS, LOWEST_POINTS } from "./swingWeightScale.ts";
import type { SwingWeightPoints } from "./units.ts";

const POINTS_PER_LETTER = 10;
const LETTERS = "ABCDEFG";

/**
 * Swing weight as people read it, to the quarter point a bench can hold: `D3`, `D3.25`.
 *
 * Ten points a letter from A0 (−30) to G10 (40). A finite value past the printed scale reads `below A0` or `above G10`.
 *
 * @param points - swing weight in points, D0 = 0
 * @returns letter and number
 * @throws {DomainError} `quantity-out-of-range` when it is not finite
 * @see fixtures/published/swingWeightScale.json
 */
export function swingWeightLabel(points: SwingWeightPoints): string {
  const quarter = Math.round(inRange(points, { field: "swingWeightPoints", unit: "points" }) * 4) / 4;
  if (quarter < LOWEST_POINTS) {
    return "below A0";
  }
  if (quarter > HIGHEST_POINTS) {
    return "above G10";
  }
  const aboveA0 = quarter - LOWEST_POINTS;
  const index = Math.min(Math.floor(aboveA0 / POINTS_PER_LETTER), LETTERS.length - 1);
  return `${LETTERS[index]}${aboveA0 - index * POINTS_PER_LETTER}`;
}
