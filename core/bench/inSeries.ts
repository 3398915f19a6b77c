import type { Route } from "./benchTypes.ts";
import { checkedRoute } from "./checkedBench.ts";

/**
 * The same route with every step after the one before it, so that nothing runs during a wait.
 *
 * @param route - minutes of each step
 * @returns the route with each step after the one before
 * @throws {DomainError} `quantity-out-of-range` when a number of the route cannot be
 * @see tests/core/bench/readyTimes.test.ts, where it shows what working through the waits saves
 */
export function inSeries(route: Route): Route {
  checkedRoute(route);
  const steps = route.steps.map((step, place) => {
    const before = route.steps[place - 1];
    return { ...step, after: before === undefined ? [] : [before.kind] };
  });
  return { ...route, steps };
}
