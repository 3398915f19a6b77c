import type { Route } from "./benchTypes.ts";

/**
 * The same route with every step after the one before it, so that nothing runs during a wait.
 *
 * @see tests/core/bench/readyTimes.test.ts, where it shows what working through the waits saves
 */
export function inSeries(route: Route): Route {
  const steps = route.steps.map((step, place) => {
    const before = route.steps[place - 1];
    return { ...step, after: before === undefined ? [] : [before.kind] };
  });
  return { ...route, steps };
}
