import type { SpecClub } from "../bag/specClub.ts";
import type { SelectionTolerances } from "../selection/selectionTolerances.ts";
import type { Allowances } from "./allowances.ts";
import type { PartsInReach } from "./parts.ts";
import type { PlanFault, Target } from "./plan.ts";

/** What a plan is made of. */
export interface PlanQuestion {
  readonly target: Target;
  readonly kind: "build" | "swap";
  /** The club named after `like`, or the one whose head is swapped. */
  readonly reference: SpecClub | null;
  readonly parts: PartsInReach;
  readonly allowances: Allowances;
  readonly tolerances: SelectionTolerances;
}

type Missing = Extract<PlanFault, { code: "missing" }>["quantities"][number];

/** Every quantity without which no plan can be made. A swap keeps length, shaft and grip; a putter goes by its model. */
export function missingQuantities({ target, kind }: PlanQuestion, family: string | null): readonly Missing[] {
  const build = kind === "build";
  const needed: readonly (readonly [Missing, boolean])[] = [
    ["headModel", target.headModel === null],
    ["loft", family !== "putter" && target.squaredLoftDeg === null && target.stampedLoftDeg === null],
    ["length", build && target.lengthMm === null],
    ["shaft", build && target.shaft === null],
    ["grip", build && target.grip === null],
  ];
  return needed.flatMap(([quantity, isMissing]) => (isMissing ? [quantity] : []));
}
