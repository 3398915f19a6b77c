import type { SpecClub } from "../bag/specClub.ts";
import type { Id } from "../kinds.ts";
import type { SelectionTolerances } from "../selection/selectionTolerances.ts";
import type { Allowances } from "./allowances.ts";
import type { MeasuredHead, PartsInReach } from "./parts.ts";
import type { PlanFault, PlanKind, Target } from "./plan.ts";

/** What a plan is made of. */
export interface PlanQuestion {
  readonly target: Target;
  readonly kind: PlanKind;
  /** The club named after `like`, or the one that gets another head or shaft. */
  readonly reference: SpecClub | null;
  /** The head of the club that is reshafted; it is never taken from stock. */
  readonly ownHead?: MeasuredHead | null;
  /** The head to build with, chosen by the rep or allotted with other orders; one that is not here is as none. */
  readonly allottedHead?: Id<"head"> | null;
  /** How many other heads the plan names; 5 when left out. */
  readonly runnersUpWanted?: number;
  /** For play, not on trial; left out, for play. */
  readonly forGamer?: boolean;
  /** Whether a technician with the skill for bonded heads is at hand; left out, none is. */
  readonly skilledTechnician?: boolean;
  readonly parts: PartsInReach;
  readonly allowances: Allowances;
  readonly tolerances: SelectionTolerances;
}

type Missing = Extract<PlanFault, { code: "missing" }>["quantities"][number];

/**
 * Every quantity without which no plan can be made. A swap keeps length, shaft and grip, a reshaft the head; a putter goes
 * by its model.
 */
export function missingQuantities({ target, kind, ownHead = null }: PlanQuestion, family: string | null): readonly Missing[] {
  const [picks, cuts] = [kind !== "reshaft", kind !== "swap"];
  const needed: readonly (readonly [Missing, boolean])[] = [
    ["headModel", picks ? target.headModel === null && target.grind === null : ownHead === null],
    ["loft", picks && family !== "putter" && target.squaredLoftDeg === null && target.stampedLoftDeg === null],
    ["length", cuts && target.lengthMm === null],
    ["shaft", cuts && target.shaft === null],
    ["grip", cuts && target.grip === null],
  ];
  return needed.flatMap(([quantity, isMissing]) => (isMissing ? [quantity] : []));
}
