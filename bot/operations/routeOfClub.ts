import type { SpecClub } from "../../core/bag/specClub.ts";
import type { Route, RouteQuestion, WaitFloors } from "../../core/bench/benchTypes.ts";
import { defaultFloors, routeFor } from "../../core/bench/routes.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import { type ClubName, clubFamily, type Id, type Instant } from "../../core/kinds.ts";
import { currentEvent } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";

/** The floors in force, with the walk of the venue. */
export function floorsAt(reader: Reader, truckId: Id<"truck">, now: Instant): WaitFloors {
  const walkMin = currentEvent(reader, truckId, now)?.event.walkMin;
  return walkMin === undefined ? defaultFloors : { ...defaultFloors, walkMin };
}

/** The route of one club's work: by its plan where there is one, else by the club on record. */
export function routeOfClub(
  kind: RouteQuestion["kind"],
  club: ClubName,
  known: { readonly plan: ClubPlan | null; readonly reference: SpecClub | null },
  floors: WaitFloors,
): Route {
  const family = clubFamily(club) ?? "iron";
  const { plan, reference } = known;
  const bySleeve = plan === null ? (reference?.sleeveMark ?? null) !== null : plan.choice.sleeve !== null;
  const unknown = plan === null && reference === null;
  const adjustable = bySleeve || (unknown && (family === "driver" || family === "fairway"));
  const piece = plan?.piece ?? null;
  const shaft = piece === null ? {} : { shaftState: piece.state, sleeveOn: piece.sleeve !== null };
  return routeFor({ kind, family, adjustable, ...shaft }, floors);
}
