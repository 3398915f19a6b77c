import { workable } from "./checkedProject.ts";
import type { Project } from "./project.ts";

/** What a project cannot do better than, whatever the order of its activities. */
export interface ProjectBounds {
  /** The longest way from the start of each activity to the end of the project. */
  readonly tailsMs: Float64Array;
  /** No schedule ends sooner: the longest chain, and the work of each resource at its capacity. */
  readonly makespanMs: number;
}

/** The longest chains of a project, and the soonest it can end. */
export function projectBounds({ activities, capacities }: Project): ProjectBounds {
  const before = activities.map((one) => (one.underWay ? [] : one.before));
  const order = workable(before);
  const headsMs = new Float64Array(activities.length);
  const tailsMs = Float64Array.from(activities, ({ durationMs }) => durationMs);
  for (const at of order) {
    const { releaseMs, underWay } = activities[at]!;
    headsMs[at] = before[at]!.reduce((latest, one) => Math.max(latest, headsMs[one]! + activities[one]!.durationMs), underWay ? 0 : releaseMs);
  }
  for (const at of order.toReversed()) {
    for (const one of before[at]!) tailsMs[one] = Math.max(tailsMs[one]!, activities[one]!.durationMs + tailsMs[at]!);
  }
  const chainMs = activities.reduce((longest, _, at) => Math.max(longest, headsMs[at]! + tailsMs[at]!), 0);
  const workMs = capacities.map((capacity, resource) => {
    const areaMs = activities.reduce((sum, { durationMs, demands }) => sum + durationMs * demands[resource]!, 0);
    return capacity === 0 ? 0 : Math.ceil(areaMs / capacity);
  });
  // What is under way may be more than a resource holds: then its work is no bound.
  const isWithin = !activities.some(({ underWay }) => underWay);
  return { tailsMs, makespanMs: isWithin ? Math.max(chainMs, ...workMs) : chainMs };
}
