import type { SpecClub } from "../../core/bag/specClub.ts";
import type { Route, RouteQuestion, WaitFloors } from "../../core/bench/benchTypes.ts";
import { type RouteTables, routeFor } from "../../core/bench/routes.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { type ClubName, clubFamily, type Id, type Instant } from "../../core/kinds.ts";
import { currentEvent } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { shopFloors, shopRoutes } from "./shopRoutes.ts";

/** The floors in force, with the walk of the venue. */
function floorsAt(reader: Reader, truckId: Id<"truck">, now: Instant): WaitFloors {
  const walkMin = currentEvent(reader, truckId, now)?.event.walkMin;
  const floors = shopFloors(reader);
  return walkMin === undefined ? floors : { ...floors, walkMin };
}

/** The floors and routes in force at a truck. */
export const shopAt = (reader: Reader, truckId: Id<"truck">, now: Instant) => ({
  floors: floorsAt(reader, truckId, now),
  routes: shopRoutes(reader),
});

/** The route of one club's work: by its plan where there is one, else by the club on record. */
export function routeOfClub(
  kind: RouteQuestion["kind"],
  club: ClubName,
  known: { readonly plan: ClubPlan | null; readonly reference: SpecClub | null },
  shop: { readonly floors: WaitFloors; readonly routes: RouteTables },
): Route {
  const family = clubFamily(club) ?? "iron";
  const { plan, reference } = known;
  const bySleeve = plan === null ? (reference?.sleeveMark ?? null) !== null : plan.choice.sleeve !== null;
  const unknown = plan === null && reference === null;
  const adjustable = bySleeve || (unknown && (family === "driver" || family === "fairway"));
  const piece = plan?.piece ?? null;
  const shaft = piece === null ? {} : { shaftState: piece.state, sleeveOn: piece.sleeve !== null };
  return routeFor({ kind, family, adjustable, ...shaft }, shop.floors, shop.routes);
}
