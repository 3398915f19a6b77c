import type { PartsInReach } from "../../core/buildSheet/parts.ts";
import type { PlanKind } from "../../core/buildSheet/plan.ts";
import type { Hand, Id } from "../../core/kinds.ts";
import { partsInReach } from "../../db/repositories/partsInReach.ts";
import { playerById } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { type AllottedToOrder, allotToOrder, nothingAllotted } from "./allotToOrder.ts";
import type { OrderToPlan, PlannedClub } from "./plannedClub.ts";
import { planInTurn, planWanted, withAnyHead } from "./planWanted.ts";
import { rivalSheets } from "./rivalSheets.ts";
import { routeOfClub, shopAt } from "./routeOfClub.ts";
import { selectionTolerances } from "./shopTolerances.ts";
import { type PartsAsked, type WantedClub, wantedClub } from "./wantedClub.ts";

interface Allotting {
  readonly wanted: readonly WantedClub[];
  readonly models: ReadonlySet<string>;
  readonly hand: Hand;
  readonly free: PartsInReach;
}

/** The order's clubs and every rival's together, with the parts to build from: the heads that confirmed rivals hold are among them. */
function allotted(
  reader: Reader,
  asked: PartsAsked,
  { wanted, models, hand, free }: Allotting,
): { readonly given: AllottedToOrder; readonly parts: PartsInReach } {
  const { truckId, now, request, replaces } = asked;
  const rivals = rivalSheets(reader, truckId, now, { models, hand }, replaces ?? null);
  if (rivals.length === 0 && wanted.length === 1) {
    return { given: nothingAllotted, parts: free };
  }
  const looked: readonly Id<"order">[] = [
    ...(replaces === undefined ? [] : [replaces]),
    ...rivals.flatMap(({ order }) => (order.state === "confirmed" ? [order.id] : [])),
  ];
  const inPlay = rivals.length === 0 ? free : partsInReach(reader, { truckId, playerId: request.player, pastOrders: looked });
  const parts = { ...free, heads: inPlay.heads };
  /** Each as if it were alone, so that every club names the heads it would like best. */
  const best = wanted.map((one) => planWanted(one, asked, parts, withAnyHead).plan);
  return { given: allotToOrder(reader, asked, best, rivals, inPlay), parts };
}

/** A club from parts: new, with another head, or with another shaft; the heads of all open orders allotted together. */
export function planParts(reader: Reader, order: OrderToPlan & { readonly kind: PlanKind }): readonly PlannedClub[] {
  const asked: PartsAsked = { ...order, tolerances: selectionTolerances(reader) };
  const { request, truckId, now, kind, replaces, headSerial } = asked;
  const hand = playerById(reader, request.player)?.hand ?? "right";
  const free = partsInReach(reader, { truckId, playerId: request.player, pastOrders: replaces === undefined ? [] : [replaces] });
  const wanted = request.clubs.flatMap((club) =>
    Array.from({ length: request.count }, (_, index) => wantedClub(reader, asked, { club, copy: index + 1, hand, parts: free })),
  );
  const chosen = headSerial === undefined ? null : (free.heads.find(({ serial }) => serial === headSerial)?.id ?? null);
  const first = planInTurn(wanted, asked, free, () => chosen);
  const models = new Set(first.flatMap(({ plan }) => (plan === null ? [] : [plan.choice.head.model.name])));
  const isAllotted = kind !== "reshaft" && chosen === null;
  const { given, parts } = isAllotted ? allotted(reader, asked, { wanted, models, hand, free }) : { given: nothingAllotted, parts: free };
  const planned = wanted.some((_, at) => given.headOf(at) !== null) ? planInTurn(wanted, asked, parts, given.headOf) : first;
  const shop = shopAt(reader, truckId, now);
  return wanted.map(({ club, copy, reference, faults: unwanted }, at): PlannedClub => {
    const { plan, faults } = planned[at] ?? { plan: null, faults: unwanted };
    const route = routeOfClub(kind, club, { plan, reference }, shop);
    const yields = given.yieldsOf(at);
    /** A draft that could have had its head has no say when there is no other. */
    const isTaken = yields !== null && yields.serial !== plan?.choice.head.serial;
    const moves = at === 0 && given.moves.length > 0 ? { moves: given.moves } : {};
    return { club, copy, reference, route, plan, service: null, beside: { yields: isTaken ? yields : null, ...moves }, faults };
  });
}
