import { rankTwins } from "../../core/bag/rankTwins.ts";
import { allTrucks } from "../../db/repositories/people.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import { finishedClubs } from "./finishedClubs.ts";
import type { OrderToPlan, PlannedClub } from "./plannedClub.ts";
import { routeOfClub, shopAt } from "./routeOfClub.ts";
import { checkTolerances } from "./shopTolerances.ts";

/** A club that broke: the nearest finished one, those in this truck first, with where it is; a sheet without one offers a build. */
export function planBroken(reader: Reader, { request, truckId, now }: OrderToPlan): readonly PlannedClub[] {
  const gamers = liveSpec(reader, request.player)?.bag.clubs ?? [];
  const shop = shopAt(reader, truckId, now);
  const truck = allTrucks(reader).find(({ id }) => id === truckId)?.name;
  return request.clubs.map((club) => {
    const gamer = gamers.find((known) => known.club === club) ?? null;
    const all = finishedClubs(reader, request.player, club);
    const ranked = gamer === null ? all : rankTwins(gamer, all, { tolerances: checkTolerances(reader) }).map(({ twin }) => twin);
    const finished = ranked.find(({ where }) => where.kind !== "out" && where.truck === truck) ?? ranked[0] ?? null;
    const reference = finished?.club ?? gamer;
    const route = routeOfClub("broke", club, { plan: null, reference }, shop);
    return { club, copy: 1, reference, route, plan: null, service: null, beside: { finished }, faults: [] };
  });
}
