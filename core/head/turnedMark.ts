import { inRange } from "../quantity/inRange.ts";
import { onClock } from "./clock.ts";
import { radians } from "./radians.ts";
import type { OnePieceSleeve } from "./sleeve.ts";
import { sleeveSettings } from "./sleeveSettings.ts";

type Ring = ReturnType<typeof sleeveSettings>;

const LEAST_GAIN = 1e-9;
const MOST_TURNS = 1000;

const wrapped = (ring: Ring, index: number) => ring[((index % ring.length) + ring.length) % ring.length];

/** How much the shaft leans to the target at a place of the ring: more lean, more loft, in either hand. */
const leanAt = (ring: Ring, index: number) => Math.cos(radians(wrapped(ring, index)?.shaftClockDeg ?? 0));

/** Whether every one of so many turns in a direction takes loft off (or, weaker, puts it on). */
function goesOn(ring: Ring, start: number, direction: 1 | -1, marks: number): boolean {
  return Array.from({ length: Math.abs(marks) }, (_, turn) => start + turn * direction).every(
    (from) => Math.sign(marks) * (leanAt(ring, from + direction) - leanAt(ring, from)) > LEAST_GAIN,
  );
}

/**
 * The printed mark a sleeve shows after it is turned so many marks towards stronger or weaker.
 *
 *     stronger: cos c falls with every mark,   weaker: it rises
 *
 * Marks lie on a ring; stronger is the way round that leans the shaft further from the target with every mark. Where
 * both ways round do, the one that passes the standard mark sooner is meant. Exact, and the same in either hand.
 *
 * @param sleeve - the sleeve with its marks c in degrees
 * @param mark - where it stands
 * @param marks - whole marks to turn, strong negative
 * @returns the mark, or null when the mark is unknown, the turn no whole one or the sleeve does not go that far
 * @throws {DomainError} `quantity-out-of-range` when an angle or the number of marks is impossible, `list-of-wrong-size` when nothing is printed
 * @throws {DomainError} `quantity-unreadable` when a mark is printed twice
 * @see fixtures/published/sleeveGeometry.json
 */
export function turnedMark(sleeve: OnePieceSleeve, mark: string, marks: number): string | null {
  inRange(marks, { field: "marks", unit: "", min: -MOST_TURNS, max: MOST_TURNS });
  const ring = [...sleeveSettings(sleeve)].sort((one, other) => onClock(one.shaftClockDeg) - onClock(other.shaftClockDeg));
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
