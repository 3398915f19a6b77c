import { finiteNumbers } from "../quantity/finiteNumbers.ts";
import type { Route } from "./benchTypes.ts";

/**
 * The same route with every step after the one before it, so that nothing runs during a wait.
 *
 * @throws {DomainError} `quantity-out-of-range` when a number of the route is not finite
 * @see tests/core/bench/readyTimes.test.ts, where it shows what working through the waits saves
 */
export function inSeries(route: Route): Route {
  finiteNumbers(route, "route");
  const steps = route.steps.map((step, place) => {
    const before = route.steps[place - 1];
    return { ...step, after: before === undefined ? [] : [before.kind] };
  });
  return { ...route, steps };
}
