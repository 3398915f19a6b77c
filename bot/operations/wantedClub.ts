import type { SpecClub } from "../../core/bag/specClub.ts";
import type { MeasuredHead, PartsInReach } from "../../core/buildSheet/parts.ts";
import type { PlanKind, Target } from "../../core/buildSheet/plan.ts";
import { resolveTarget } from "../../core/buildSheet/resolveTarget.ts";
import { type ClubName, clubFamily, type Hand } from "../../core/kinds.ts";
import type { SelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import type { Reader } from "../../db/write.ts";
import { ownHead } from "./ownHead.ts";
import type { OrderFault, OrderToPlan } from "./plannedClub.ts";
import { referenceOf } from "./referenceOf.ts";

/** An order of clubs from parts, with the shop's tolerances. */
export type PartsAsked = OrderToPlan & { readonly kind: PlanKind; readonly tolerances: SelectionTolerances };

/** One club to plan, as far as its words and its record say. */
export interface WantedClub {
  readonly club: ClubName;
  readonly copy: number;
  readonly reference: SpecClub | null;
  /** Null where the faults say why there is none. */
  readonly target: Target | null;
  readonly ownHead: MeasuredHead | null;
  readonly faults: readonly OrderFault[];
}

/** Reads what one club of an order should be: its target resolved, and of a reshaft the head it has. */
export function wantedClub(
  reader: Reader,
  { request, truckId, now, kind }: PartsAsked,
  { club, copy, hand, parts }: { readonly club: ClubName; readonly copy: number; readonly hand: Hand; readonly parts: PartsInReach },
): WantedClub {
  const reference = referenceOf(reader, request, club, truckId, now);
  const none = { club, copy, reference, target: null, ownHead: null };
  if (request.like !== null && reference === null && request.out.length === 0) {
    return { ...none, faults: [{ code: "no-reference", from: request.like.from, club }] };
  }
  const sleeves = [...parts.sleeves, ...(parts.elsewhere?.sleeves ?? [])].map(({ model }) => model);
  const resolved = resolveTarget({ request, club, hand, reference, family: clubFamily(club) ?? "iron", sleeves });
  if (resolved.faults.length > 0) {
    return { ...none, faults: resolved.faults };
  }
  const own = kind === "reshaft" ? ownHead(reader, reference, hand) : null;
  return kind === "reshaft" && own === null
    ? { ...none, faults: [{ code: "no-such-club", club }] }
    : { ...none, target: resolved.target, ownHead: own, faults: [] };
}
