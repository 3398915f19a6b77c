import type { Project } from "../../../../core/bench/plan/project.ts";

/** Everything a schedule breaks, in words; empty when it can be followed. Written without a look at how schedules are made. */
export function faultsOf({ activities, capacities, open }: Project, startsMs: readonly (number | null)[]): readonly string[] {
  const placed = activities.flatMap((activity, at) => {
    const startMs = startsMs[at];
    return startMs === null || startMs === undefined ? [] : [{ ...activity, at, startMs, endMs: startMs + activity.durationMs }];
  });
  return placed.flatMap(({ at, startMs, endMs, releaseMs, before, byHand, underWay }) => {
    if (underWay) return startMs === 0 ? [] : [`${at} is under way and starts at ${startMs}`];
    const unfinished = before.filter((earlier) => !placed.some((one) => one.at === earlier && one.endMs <= startMs));
    const isOpen = !byHand || open === null || open.some(({ fromMs, toMs }) => fromMs <= startMs && endMs <= toMs);
    const over = capacities.flatMap((capacity, resource) => {
      const taken = placed.filter((one) => one.startMs <= startMs && startMs < one.endMs).reduce((sum, one) => sum + (one.demands[resource] ?? 0), 0);
      return (activities[at]?.demands[resource] ?? 0) > 0 && taken > capacity ? [`${at} is too much for resource ${resource}`] : [];
    });
    return [
      ...unfinished.map((earlier) => `${at} does not wait for ${earlier}`),
      ...(startMs < releaseMs ? [`${at} starts before its release`] : []),
      ...(isOpen ? [] : [`${at} is not within opening hours`]),
      ...over,
    ];
  });
}
