import { inRange } from "./inRange.ts";
import { GRAMS_PER_OUNCE, type InchOunces, inchOunces, MM_PER_INCH, type SwingWeightPoints, swingWeightPoints } from "./units.ts";

/**
 * One point of the 14-inch scale, in inch-ounces. A second rule, 50 gram-inches a point, is a rounding of the same
 * thing (49.6117 g·in): the two differ by about 0.1 point between D0 and D5. This core uses 1.75 in-oz throughout.
 */
const INCH_OUNCES_PER_POINT = 1.75;
/** Where D0 lies on the 14-inch scale. */
const INCH_OUNCES_AT_D0 = 213.5;
/** The fulcrum of the scale, from the end of the grip cap: 14 inches. */
export const FULCRUM_MM = 14 * MM_PER_INCH;
/** One point as a moment about the fulcrum. */
export const GRAM_MM_PER_POINT = INCH_OUNCES_PER_POINT * GRAMS_PER_OUNCE * MM_PER_INCH;
/** The ends of the printed scale, A0 and G10. */
export const LOWEST_POINTS = -30;
export const HIGHEST_POINTS = 40;
/** Far past any club: what 5 kg come to at 2 m. */
const MOST_INCH_OUNCES = 12_000;
const MOST_POINTS = 6700;

/** A moment on a swing-weight scale that can be. */
export const checkedInchOunces = (moment: InchOunces): number =>
  inRange(moment, { field: "inchOunces", unit: "in-oz", min: -MOST_INCH_OUNCES, max: MOST_INCH_OUNCES });

/**
 * Swing-weight points of a moment on the 14-inch scale.
 *
 *     p = (S − 213.5) / 1.75
 *
 * Exact by the definition of the scale; D0 is 0.
 *
 * @param moment - S in in-oz
 * @returns points, D0 = 0
 * @throws {DomainError} `quantity-out-of-range` when S is impossible
 * @see fixtures/published/swingWeightScale.json
 */
export function pointsFromInchOunces(moment: InchOunces): SwingWeightPoints {
  return swingWeightPoints((checkedInchOunces(moment) - INCH_OUNCES_AT_D0) / INCH_OUNCES_PER_POINT);
}

/**
 * The moment on the 14-inch scale that reads so many points.
 *
 *     S = 213.5 + 1.75 p
 *
 * Exact by the definition of the scale.
 *
 * @param points - p, D0 = 0
 * @returns in-oz
 * @throws {DomainError} `quantity-out-of-range` when p is impossible
 * @see fixtures/published/swingWeightScale.json
 */
export function inchOuncesFromPoints(points: SwingWeightPoints): InchOunces {
  const onScale = inRange(points, { field: "swingWeightPoints", unit: "points", min: -MOST_POINTS, max: MOST_POINTS });
  return inchOunces(INCH_OUNCES_AT_D0 + INCH_OUNCES_PER_POINT * onScale);
}
