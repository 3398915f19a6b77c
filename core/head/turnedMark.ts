import type { SleeveModel } from "../buildSheet/parts.ts";

type Ring = SleeveModel["marks"];

const LEAST_GAIN = 1e-9;

const wrapped = (ring: Ring, index: number) => ring[((index % ring.length) + ring.length) % ring.length];

/** How much the shaft leans to the target at a place of the ring: more lean, more loft, in either hand. */
const leanAt = (ring: Ring, index: number) => Math.cos(((wrapped(ring, index)?.clockDeg ?? 0) * Math.PI) / 180);

/** Whether every one of so many turns in a direction takes loft off (or, weaker, puts it on). */
function goesOn(ring: Ring, start: number, direction: 1 | -1, marks: number): boolean {
  return Array.from({ length: Math.abs(marks) }, (_, turn) => start + turn * direction).every(
    (from) => Math.sign(marks) * (leanAt(ring, from + direction) - leanAt(ring, from)) > LEAST_GAIN,
  );
}

/**
 * The printed mark a sleeve shows after it is turned so many marks towards stronger or weaker.
 *
 * Marks lie on a ring; stronger is the way round that leans the shaft further from the target with every mark. Where
 * both ways round do, the one that passes the standard mark sooner is meant.
 *
 * @param sleeve - the sleeve with its marks
 * @param mark - where it stands
 * @param marks - whole marks to turn, strong negative
 * @returns the mark, or null when the mark is unknown or the sleeve does not go that far
 */
export function turnedMark(sleeve: SleeveModel, mark: string, marks: number): string | null {
  const ring = [...sleeve.marks].sort((one, other) => one.clockDeg - other.clockDeg);
  const start = ring.findIndex((entry) => entry.mark === mark);
  const standard = ring.findIndex((entry) => entry.mark === sleeve.standardMark);
  if (start < 0 || !Number.isInteger(marks) || Math.abs(marks) >= ring.length) {
    return null;
  }
  const onwards = (standard - start + ring.length) % ring.length;
  const directions: readonly (1 | -1)[] = onwards <= ring.length / 2 ? [1, -1] : [-1, 1];
  const direction = directions.find((way) => goesOn(ring, start, way, marks));
  return direction === undefined ? null : (wrapped(ring, start + Math.abs(marks) * direction)?.mark ?? null);
}
