import { DomainError } from "../errors.ts";
import type { RouteStep } from "./benchTypes.ts";

/**
 * What each step of a job waits for: every other step of a kind named in `after`, so that a repeated step counts too.
 * A kind the job does not have asks for nothing.
 *
 * @returns for each step the places of the steps before it
 */
export function predecessorPlaces(steps: readonly Pick<RouteStep, "kind" | "after">[]): readonly (readonly number[])[] {
  return steps.map((step, place) => steps.flatMap((other, at) => (at !== place && step.after.includes(other.kind) ? [at] : [])));
}

/**
 * The places of a job's steps in an order in which each comes after all it waits for.
 *
 * @throws {DomainError} `route-has-a-cycle` when some steps wait for each other, with their kinds
 */
export function workableOrder(steps: readonly Pick<RouteStep, "kind" | "after">[]): readonly number[] {
  const before = predecessorPlaces(steps);
  const placed = new Set<number>();
  for (let round = 0; round < steps.length && placed.size < steps.length; round++) {
    before.forEach((places, at) => {
      if (places.every((place) => placed.has(place))) placed.add(at);
    });
  }
  if (placed.size < steps.length) {
    throw new DomainError("route-has-a-cycle", { steps: steps.filter((_, at) => !placed.has(at)).map((step) => step.kind) });
  }
  return [...placed];
}
