import { defaultAllowances } from "../../core/buildSheet/allowances.ts";
import type { PartsInReach } from "../../core/buildSheet/parts.ts";
import { planClub } from "../../core/buildSheet/planClub.ts";
import type { Id } from "../../core/kinds.ts";
import { partsLeft } from "./partsLeft.ts";
import type { PlannedClub } from "./plannedClub.ts";
import type { PartsAsked, WantedClub } from "./wantedClub.ts";

type Planned = Pick<PlannedClub, "plan" | "faults">;

/** The head a plan is made with, null for the best there is; and how many others it names. */
export interface HeadAsked {
  readonly allottedHead: Id<"head"> | null;
  readonly runnersUpWanted: number;
}

/** Other heads a card names. */
const HEADS_SHOWN = 5;
/** As many as clubs may compete for heads. */
const HEADS_COMPARED = 40;

export const withHead = (allottedHead: Id<"head"> | null): HeadAsked => ({ allottedHead, runnersUpWanted: HEADS_SHOWN });
export const withAnyHead: HeadAsked = { allottedHead: null, runnersUpWanted: HEADS_COMPARED };

/** Plans one club from the parts in reach, or says why not. */
export function planWanted({ target, reference, ownHead, faults }: WantedClub, asked: PartsAsked, parts: PartsInReach, head: HeadAsked): Planned {
  if (target === null) {
    return { plan: null, faults };
  }
  const result = planClub({
    target,
    kind: asked.kind,
    reference,
    ownHead,
    ...head,
    forGamer: asked.request.purpose !== "test",
    parts,
    allowances: defaultAllowances,
    tolerances: asked.tolerances,
  });
  return result.kind === "planned" ? { plan: result.plan, faults: [] } : { plan: null, faults: result.faults };
}

/** Plans club after club, each from what the one before leaves. */
export function planInTurn(
  all: readonly WantedClub[],
  asked: PartsAsked,
  parts: PartsInReach,
  headOf: (at: number) => Id<"head"> | null,
): readonly Planned[] {
  const planned: Planned[] = [];
  all.reduce((left, wanted, at) => {
    const one = planWanted(wanted, asked, left, withHead(headOf(at)));
    planned.push(one);
    return one.plan === null ? left : partsLeft(left, one.plan);
  }, parts);
  return planned;
}
