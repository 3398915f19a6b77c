import type { SpecClub } from "../../core/bag/specClub.ts";
import type { Route, WaitFloors } from "../../core/bench/benchTypes.ts";
import { defaultFloors, routeFor } from "../../core/bench/routes.ts";
import { defaultAllowances } from "../../core/buildSheet/allowances.ts";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { ClubPlan, PlanFault } from "../../core/buildSheet/plan.ts";
import { planClub } from "../../core/buildSheet/planClub.ts";
import { resolveTarget, type TargetFault } from "../../core/buildSheet/resolveTarget.ts";
import { type ClubName, clubFamily, type Id, type Instant } from "../../core/kinds.ts";
import { defaultSelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import { orderByNumber, sheetsOf } from "../../db/repositories/orders.ts";
import { currentEvent, playerById } from "../../db/repositories/people.ts";
import { partsInReach } from "../../db/repositories/stock.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import { clubOfSheet } from "./clubOfSheet.ts";

export type OrderFault =
  | PlanFault
  | TargetFault
  | { readonly code: "no-reference"; readonly from: "gamer" | "backup" | "order"; readonly club: ClubName };

/** One club of an order: its route, its plan when this kind of work has one, or why it cannot be planned. */
export interface PlannedClub {
  readonly club: ClubName;
  readonly reference: SpecClub | null;
  readonly route: Route;
  readonly plan: ClubPlan | null;
  readonly faults: readonly OrderFault[];
}

function floorsAt(reader: Reader, truckId: Id<"truck">, now: Instant): WaitFloors {
  const walkMin = currentEvent(reader, truckId, now)?.event.walkMin;
  return walkMin === undefined ? defaultFloors : { ...defaultFloors, walkMin };
}

function referenceOf(reader: Reader, request: BuildRequest, club: ClubName, truckId: Id<"truck">, now: Instant): SpecClub | null {
  const bag = liveSpec(reader, request.player)?.bag ?? null;
  const gamer = bag?.clubs.find((known) => known.club === club) ?? null;
  if (request.like === null) {
    return request.kind === "build" ? null : gamer;
  }
  if (request.like.from === "gamer") {
    return gamer;
  }
  if (request.like.from === "backup") {
    return bag?.backups.find((known) => known.club === club) ?? null;
  }
  const order = orderByNumber(reader, truckId, currentEvent(reader, truckId, now)?.event.id ?? null, request.like.number);
  const sheet = order === null ? undefined : sheetsOf(reader, order).find((known) => known.club === club);
  return order === null || sheet === undefined ? null : clubOfSheet(reader, sheet);
}

function planOne(
  reader: Reader,
  request: BuildRequest,
  club: ClubName,
  truckId: Id<"truck">,
  now: Instant,
  headSerial: string | undefined,
): PlannedClub {
  const family = clubFamily(club) ?? "iron";
  const reference = referenceOf(reader, request, club, truckId, now);
  const adjustable = family === "driver" || (reference?.sleeveMark ?? null) !== null || family === "fairway";
  const route = routeFor({ kind: request.kind, family, adjustable, readySleeved: false }, floorsAt(reader, truckId, now));
  if (request.kind !== "build" && request.kind !== "swap") {
    return { club, reference, route, plan: null, faults: [] };
  }
  if (request.like !== null && reference === null) {
    return { club, reference, route, plan: null, faults: [{ code: "no-reference", from: request.like.from, club }] };
  }
  const hand = playerById(reader, request.player)?.hand ?? "right";
  const reach = partsInReach(reader, truckId, request.player);
  const parts = headSerial === undefined ? reach : { ...reach, heads: reach.heads.filter(({ serial }) => serial === headSerial) };
  const resolved = resolveTarget({ request, club, hand, reference, family, sleeves: parts.sleeves.map(({ model }) => model) });
  if (resolved.faults.length > 0) {
    return { club, reference, route, plan: null, faults: resolved.faults };
  }
  const result = planClub({
    target: resolved.target,
    kind: request.kind,
    reference,
    parts,
    allowances: defaultAllowances,
    tolerances: defaultSelectionTolerances,
  });
  return result.kind === "planned"
    ? { club, reference, route, plan: result.plan, faults: [] }
    : { club, reference, route, plan: null, faults: result.faults };
}

/**
 * Plans every club of a request from the parts in reach now.
 *
 * @param reader - database or transaction; nothing is changed
 * @param request - what is asked for
 * @param truckId - the truck that builds
 * @param now - the moment
 * @param headSerial - the one head to build with, when it was chosen
 */
export function planOrder(reader: Reader, request: BuildRequest, truckId: Id<"truck">, now: Instant, headSerial?: string): readonly PlannedClub[] {
  return request.clubs.map((club) => planOne(reader, request, club, truckId, now, headSerial));
}
