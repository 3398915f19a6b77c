import type { RouteStep } from "../benchTypes.ts";
import type { Stage } from "../pace.ts";
import { stagesOf } from "../stageOf.ts";
import { predecessorPlaces, workableOrder } from "../stepOrder.ts";

/** A step of the stage or a wait that runs in it, as the walk needs it. */
interface Part {
  readonly kind: RouteStep["kind"];
  readonly minutes: number;
  readonly setUpMin: number;
  readonly isWait: boolean;
  readonly before: readonly Part[];
  endMin: number;
}

/** The hands-on steps of a stage, and the waits that run in it: a bond sets from the press before `toDone`, a grip in `check`. */
function partsOf(route: readonly RouteStep[], stage: Stage): readonly Part[] {
  const stages = stagesOf(route);
  const before = predecessorPlaces(route);
  const parts = new Map<number, Part>();
  const belongs = (place: number): boolean => {
    const step = route[place];
    if (step === undefined || step.kind === "walk") return false;
    if (!step.unattended) return stages[place] === stage;
    return stage === "toDone" ? step.kind !== "gripSet" : stage === "check" && step.kind === "gripSet";
  };
  for (const place of workableOrder(route)) {
    const step = route[place];
    if (step === undefined || !belongs(place)) continue;
    parts.set(place, {
      kind: step.kind,
      minutes: Math.max(step.medianMin, step.unattended ? step.floorMin : 0),
      setUpMin: step.setUpMin ?? 0,
      isWait: step.unattended,
      before: (before[place] ?? []).flatMap((earlier) => parts.get(earlier) ?? []),
      endMin: Number.POSITIVE_INFINITY,
    });
  }
  return [...parts.values()];
}

/** The clubs of an order station by station: the first step of every club before the second of any. */
function interleaved(clubs: readonly (readonly Part[])[]): readonly Part[] {
  const longest = Math.max(0, ...clubs.map((club) => club.length));
  return Array.from({ length: longest }, (_, at) => clubs.flatMap((club) => club[at] ?? [])).flat();
}

const readyMin = (part: Part): number => part.before.reduce((latest, one) => Math.max(latest, one.endMin), 0);

/**
 * How long one technician needs for a stage of an order when hands-on work takes `pace` times its median and waits what is planned.
 *
 * The first step in line that can be worked is worked; a wait runs by itself. Clubs of a set go station by station, set up once.
 *
 * @param clubs - the routes of the order's clubs
 * @param pace - factor on hands-on medians
 * @returns minutes from the press that begins the stage to the one that ends it
 */
export function stageMinutes(clubs: readonly (readonly RouteStep[])[], stage: Stage, pace: number): number {
  const parts = interleaved(clubs.map((route) => partsOf(route, stage)));
  let nowMin = 0;
  let last: Part | null = null;
  let left = parts.filter(({ isWait }) => !isWait);
  const startWaits = (): void => {
    for (const part of parts) {
      const from = readyMin(part);
      if (part.isWait && part.endMin === Number.POSITIVE_INFINITY && from <= nowMin) part.endMin = from + part.minutes;
    }
  };
  startWaits();
  while (left.length > 0) {
    const next = left.find((part) => readyMin(part) <= nowMin);
    if (next === undefined) {
      const waits = left.map(readyMin).filter((at) => at > nowMin);
      nowMin = Math.min(...waits);
      if (!Number.isFinite(nowMin)) return Number.POSITIVE_INFINITY;
    } else {
      const isSetUp: boolean = last !== null && last.kind === next.kind;
      nowMin += pace * (next.minutes - (isSetUp ? next.setUpMin : 0));
      next.endMin = nowMin;
      last = next;
      left = left.filter((part) => part !== next);
    }
    startWaits();
  }
  return nowMin;
}

/** The hands-on medians of a stage, of all clubs. */
export const stageMedians = (clubs: readonly (readonly RouteStep[])[], stage: Stage): readonly number[] =>
  clubs.flatMap((route) => partsOf(route, stage).flatMap(({ isWait, minutes }) => (isWait ? [] : [minutes])));
