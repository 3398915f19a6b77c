import type { RouteStep, StepKind } from "./benchTypes.ts";
import type { Stage } from "./pace.ts";
import { predecessorPlaces } from "./stepOrder.ts";

/** Work that follows the press Done. */
const checking: readonly StepKind[] = ["measure", "sign"];

/**
 * The stage each step of a route is worked in, press to press.
 *
 * `toGlue` is what the setting of a bond waits for, `check` the measuring and signing, `toDone` all other hands-on work, what may
 * be done beside the glue included. A wait belongs to none: waits are never learned.
 *
 * @returns a stage or null for each step, in the order of the route
 */
export function stagesOf(steps: readonly Pick<RouteStep, "kind" | "after" | "unattended">[]): readonly (Stage | null)[] {
  const before = predecessorPlaces(steps);
  const toGlue = new Set<number>();
  const reach = (place: number): void => {
    for (const earlier of before[place] ?? []) {
      if (!toGlue.has(earlier)) {
        toGlue.add(earlier);
        reach(earlier);
      }
    }
  };
  steps.forEach(({ kind }, place) => {
    if (kind === "bondSet") reach(place);
  });
  return steps.map(({ kind, unattended }, place) =>
    unattended ? null : checking.includes(kind) ? "check" : toGlue.has(place) ? "toGlue" : "toDone",
  );
}
