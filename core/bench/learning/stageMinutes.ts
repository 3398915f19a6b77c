import type { StagePart, Way } from "./stageParts.ts";

const atFirstPress: Way = { endMin: 0, workMin: 0, workSquares: 0, waitSquares: 0 };
const later = (one: Way, other: Way): Way => (other.endMin > one.endMin ? other : one);

/** What a part waits for, the last of it. */
const readyWay = (part: StagePart): Way => part.before.reduce((latest, { way }) => (way === null ? latest : later(latest, way)), atFirstPress);

const waited = (from: Way, minutes: number): Way => ({
  ...from,
  endMin: from.endMin + minutes,
  waitSquares: from.waitSquares + minutes ** 2,
});

const worked = (from: Way, medianMin: number, pace: number): Way => ({
  ...from,
  endMin: from.endMin + pace * medianMin,
  workMin: from.workMin + medianMin,
  workSquares: from.workSquares + medianMin ** 2,
});

/** Waits begin by themselves as soon as what they wait for is over. */
function beginWaits(parts: readonly StagePart[]): void {
  for (const part of parts) {
    if (part.isWait && part.way === null && part.before.every(({ way }) => way !== null)) part.way = waited(readyWay(part), part.minutes);
  }
}

/** What is worked next: the same kind as just now where that saves setting up, else the first in line that can be; else what can be soonest. */
function nextPart(parts: readonly StagePart[], hands: Way, last: StagePart | null): StagePart | null {
  let first: StagePart | null = null;
  let firstMin = Number.POSITIVE_INFINITY;
  for (const part of parts) {
    if (part.isWait || part.way !== null || part.before.some(({ way }) => way === null)) continue;
    const fromMin = Math.max(hands.endMin, readyWay(part).endMin);
    if (fromMin === hands.endMin && part.setUpMin > 0 && part.kind === last?.kind) return part;
    if (fromMin >= firstMin) continue;
    first = part;
    firstMin = fromMin;
  }
  return first;
}

/**
 * How long one technician needs for a stage of an order when hands-on work takes `pace` times its median and waits their average length,
 * with what bounds that time.
 *
 * Work goes on during waits where the route allows; clubs of a set go kind by kind, set up once.
 *
 * @param clubs - the stage's parts of each club
 * @param pace - factor on hands-on medians
 * @returns the way from the press that begins the stage to the one that ends it
 */
export function stageMinutes(clubs: readonly (readonly StagePart[])[], pace: number): Way {
  const parts = clubs.flat();
  for (const part of parts) part.way = null;
  let hands = atFirstPress;
  let last: StagePart | null = null;
  beginWaits(parts);
  for (let next = nextPart(parts, hands, last); next !== null; next = nextPart(parts, hands, last)) {
    const medianMin: number = next.minutes - (next.kind === last?.kind ? Math.min(next.setUpMin, next.minutes) : 0);
    hands = worked(later(hands, readyWay(next)), medianMin, pace);
    next.way = hands;
    last = next;
    beginWaits(parts);
  }
  return parts.reduce((latest, { way }) => (way === null ? latest : later(latest, way)), hands);
}
