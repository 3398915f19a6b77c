import { DomainError } from "../../errors.ts";
import { finiteNumbers } from "../../quantity/finiteNumbers.ts";
import { inRange } from "../../quantity/inRange.ts";
import { listOf } from "../../quantity/listOf.ts";
import { oneOf } from "../../quantity/oneOf.ts";
import { wholeNumber } from "../../quantity/wholeNumber.ts";
import { goals, type PlanBudget, type Project } from "./project.ts";

const LONGEST_MS = 1e12;
const LARGEST_DEMAND = 1_000_000;

/** Places in an order in which each comes after all it waits for; shorter than the project when some wait for each other. */
export function workable(before: readonly (readonly number[])[]): readonly number[] {
  const placed = new Set<number>();
  for (let size = -1; size < placed.size; ) {
    size = placed.size;
    before.forEach((earlier, at) => {
      if (!placed.has(at) && earlier.every((one) => placed.has(one))) placed.add(at);
    });
  }
  return [...placed];
}

/**
 * A project that can be planned: whole milliseconds, a demand for each resource, forerunners that exist, no cycle.
 *
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be
 * @throws {DomainError} `route-has-a-cycle` when activities wait for each other
 */
export function checkedProject(project: Project, budget: PlanBudget): void {
  finiteNumbers(project, "project");
  const { activities, capacities } = project;
  for (const capacity of capacities) wholeNumber(capacity, { field: "capacities", min: 0, max: LARGEST_DEMAND });
  activities.forEach(({ durationMs, demands, before, releaseMs, due }, at) => {
    wholeNumber(durationMs, { field: `activities.${at}.durationMs`, min: 0, max: LONGEST_MS });
    wholeNumber(releaseMs, { field: `activities.${at}.releaseMs`, min: 0, max: LONGEST_MS });
    listOf(demands, { field: `activities.${at}.demands`, min: capacities.length, max: capacities.length });
    for (const demand of demands) wholeNumber(demand, { field: `activities.${at}.demands`, min: 0, max: LARGEST_DEMAND });
    for (const earlier of before) wholeNumber(earlier, { field: `activities.${at}.before`, min: 0, max: activities.length - 1 });
    if (due !== null) inRange(due.weight, { field: `activities.${at}.weight`, unit: "", min: 0 });
  });
  oneOf(budget.goal, goals, "goal");
  wholeNumber(budget.schedules, { field: "schedules", min: 1, max: 10_000_000 });
  wholeNumber(budget.seed, { field: "seed", min: Number.MIN_SAFE_INTEGER, max: Number.MAX_SAFE_INTEGER });
  const order = workable(activities.map(({ before }) => before));
  if (order.length < activities.length) {
    throw new DomainError("route-has-a-cycle", { steps: activities.flatMap((_, at) => (order.includes(at) ? [] : [`activity ${at}`])) });
  }
}
