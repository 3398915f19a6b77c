import { HIGHEST_POINTS, LOWEST_POINTS } from "./swingWeightScale.ts";
import { type SwingWeightPoints, swingWeightPoints } from "./units.ts";

const LONGEST_LABEL = 12;
const LABEL = /^([a-g]) ?(\d{1,2}(?:[.,]\d{1,3})?)$/i;

/**
 * Points of a written swing weight: `D3`, `d3.5`, `D 3,25`.
 *
 *     p = 10 · (letter − A) + number − 30
 *
 * Numbers run from 0 to below 10, on the letter G to 10.
 *
 * @param label - as written; spaces around it do not count
 * @returns points (D0 = 0), or null when it is no swing weight
 * @see fixtures/published/swingWeightScale.json
 */
export function swingWeightPointsOf(label: string): SwingWeightPoints | null {
  if (label.length > LONGEST_LABEL) {
    return null;
  }
  const [, letter, number] = LABEL.exec(label.trim()) ?? [];
  if (letter === undefined || number === undefined) {
    return null;
  }
  const tens = letter.toUpperCase().charCodeAt(0) - "A".charCodeAt(0);
  const ones = Number(number.replace(",", "."));
  const points = tens * 10 + ones + LOWEST_POINTS;
  const onScale = letter.toUpperCase() === "G" ? points <= HIGHEST_POINTS : ones < 10;
  return onScale ? swingWeightPoints(points) : null;
}
