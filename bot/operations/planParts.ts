import type { SpecClub } from "../../core/bag/specClub.ts";
import { defaultAllowances } from "../../core/buildSheet/allowances.ts";
import type { MeasuredHead, PartsInReach } from "../../core/buildSheet/parts.ts";
import type { ClubPlan, HeadChoice, Target } from "../../core/buildSheet/plan.ts";
import { planClub } from "../../core/buildSheet/planClub.ts";
import { resolveTarget } from "../../core/buildSheet/resolveTarget.ts";
import { type ClubName, clubFamily, type Hand, type Id } from "../../core/kinds.ts";
import { allotHeads } from "../../core/selection/allotHeads.ts";
import type { HeadWanted } from "../../core/selection/headWanted.ts";
import type { SelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import { partsInReach } from "../../db/repositories/partsInReach.ts";
import { playerById } from "../../db/repositories/people.ts";
import type { SheetPlan } from "../../db/repositories/sheetPlan.ts";
import type { Reader } from "../../db/write.ts";
import { orderWeight } from "./orderWeight.ts";
import { ownHead } from "./ownHead.ts";
import { partsLeft } from "./partsLeft.ts";
import type { OrderFault, OrderToPlan, PlannedClub } from "./plannedClub.ts";
import { referenceOf } from "./referenceOf.ts";
import { type RivalSheet, rivalSheets } from "./rivalSheets.ts";
import { clubsInSet, floorsAt, routeOfClub } from "./routeOfClub.ts";
import { selectionTolerances } from "./shopTolerances.ts";

type PartsKind = ClubPlan["kind"];
type Asked = OrderToPlan & { readonly kind: PartsKind; readonly tolerances: SelectionTolerances };

/** One club to plan, as far as its words and its record say. */
interface Wanted {
  readonly club: ClubName;
  readonly copy: number;
  readonly reference: SpecClub | null;
  readonly target: Target | null;
  readonly ownHead: MeasuredHead | null;
  readonly faults: readonly OrderFault[];
}

type HeadId = Id<"head">;

function wantedClub(reader: Reader, asked: Asked, hand: Hand, parts: PartsInReach, club: ClubName, copy: number): Wanted {
  const { request, truckId, now, kind } = asked;
  const reference = referenceOf(reader, request, club, truckId, now);
  const none = { club, copy, reference, target: null, ownHead: null };
  if (request.like !== null && reference === null && !request.out.length) {
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

/** Other heads a card names; and how many each club names when heads are allotted: as many as clubs may compete. */
const HEADS_SHOWN = 5;
const HEADS_COMPARED = 40;

function planWanted(
  wanted: Wanted,
  asked: Asked,
  parts: PartsInReach,
  allottedHead: HeadId | null,
  headsNamed = HEADS_SHOWN,
): Pick<PlannedClub, "plan" | "faults"> {
  if (wanted.target === null) {
    return { plan: null, faults: wanted.faults };
  }
  const result = planClub({
    target: wanted.target,
    kind: asked.kind,
    reference: wanted.reference,
    ownHead: wanted.ownHead,
    allottedHead,
    runnersUpWanted: headsNamed,
    forGamer: asked.request.purpose !== "test",
    parts,
    allowances: defaultAllowances,
    tolerances: asked.tolerances,
  });
  return result.kind === "planned" ? { plan: result.plan, faults: [] } : { plan: null, faults: result.faults };
}

/** Plans club after club, each from what the one before leaves. */
function planInTurn(all: readonly Wanted[], asked: Asked, parts: PartsInReach, headOf: (wanted: Wanted) => HeadId | null) {
  const planned: Pick<PlannedClub, "plan" | "faults">[] = [];
  all.reduce((left, wanted) => {
    const one = planWanted(wanted, asked, left, headOf(wanted));
    planned.push(one);
    return one.plan === null ? left : partsLeft(left, one.plan);
  }, parts);
  return planned;
}

/** Own clubs are known by their place in the order, the others by their sheet. */
type Key = { readonly own: number } | { readonly rival: RivalSheet; readonly plan: ClubPlan };

/**
 * A club's heads with what each costs it. What a gauge cannot tell apart costs the same, so that a standard mark, or less to
 * bend, is not given up for less than that; a confirmed sheet may get only what is no further from what was written.
 */
function choicesOf({ choice, runnersUp }: ClubPlan, held: number | null, { scoreBand }: SelectionTolerances): readonly HeadChoice[] {
  return [choice, ...runnersUp]
    .filter(({ score }) => held === null || score <= held + SCORE_SLACK)
    .map((one) => ({ ...one, score: Math.floor(one.score / scoreBand + SCORE_SLACK) * scoreBand }));
}

const SCORE_SLACK = 1e-9;

/** A rival's choices among all heads that are in play, its own included; null when its plan cannot be made any more. */
function planRival({ sheet, plan }: RivalSheet, { tolerances }: Asked, parts: PartsInReach, allottedHead: HeadId | null): ClubPlan | null {
  const { target, kind } = plan;
  const result = planClub({
    target,
    kind,
    reference: sheet.sheetPlan.reference ?? null,
    allottedHead,
    runnersUpWanted: allottedHead === null ? HEADS_COMPARED : HEADS_SHOWN,
    forGamer: true,
    parts,
    allowances: defaultAllowances,
    tolerances,
  });
  return result.kind === "planned" ? result.plan : null;
}

interface Allotted {
  readonly headOf: (at: number) => HeadId | null;
  readonly beside: (at: number) => Pick<SheetPlan, "yields" | "moves">;
}

const nothingAllotted: Allotted = { headOf: () => null, beside: () => ({}) };

/** Which of the heads wanted by several open clubs goes to which, at the least total loss. */
function allotted(asked: Asked, first: readonly (ClubPlan | null)[], rivals: readonly RivalSheet[], parts: PartsInReach): Allotted {
  const rivalPlans = rivals.flatMap((rival) => {
    const plan = planRival(rival, asked, parts, null);
    return plan === null ? [] : [{ rival, plan }];
  });
  const own = first.flatMap((plan, at) => (plan === null ? [] : [{ at, plan }]));
  if (own.length + rivalPlans.length < 2) {
    return nothingAllotted;
  }
  const weight = orderWeight({ urgent: asked.request.urgent, byAt: asked.request.by === null ? null : asked.now });
  /** Those who were here before come first: among equals they keep what they have. */
  const wanted: readonly HeadWanted<Key>[] = [
    ...rivalPlans.map(({ rival, plan }) => ({
      key: { rival, plan },
      weight: orderWeight(rival.order),
      choices: choicesOf(plan, rival.order.state === "confirmed" ? rival.plan.choice.score : null, asked.tolerances),
      held: rival.order.state === "confirmed" ? { headId: rival.plan.choice.head.id, score: rival.plan.choice.score } : null,
    })),
    ...own.map(({ at, plan }) => ({ key: { own: at }, weight, choices: choicesOf(plan, null, asked.tolerances) })),
  ];
  const { allotted: all } = allotHeads(wanted);
  const byPlace = new Map(all.flatMap(({ key, choice }) => ("own" in key && choice !== null ? [[key.own, choice] as const] : [])));
  const rivalsGet = all.flatMap(({ key, choice }) => ("rival" in key && choice !== null ? [{ ...key, choice }] : []));
  const moves = rivalsGet
    .filter(({ rival, choice }) => rival.order.state === "confirmed" && choice.head.id !== rival.plan.choice.head.id)
    .flatMap(({ rival, choice }) => {
      const plan = planRival(rival, asked, parts, choice.head.id);
      return plan === null ? [] : [{ order: rival.order.id, version: rival.order.version, sheet: rival.sheet.id, number: rival.order.number, plan }];
    });
  const yieldsOf = (at: number): NonNullable<SheetPlan["yields"]> | null => {
    const best = own.find((row) => row.at === at)?.plan.choice.head;
    const taker = rivalsGet.find(({ choice }) => choice.head.id === best?.id);
    const isOwn = best === undefined || byPlace.get(at)?.head.id === best.id;
    return isOwn || taker === undefined ? null : { serial: best.serial, toOrder: taker.rival.order.number };
  };
  return {
    headOf: (at) => byPlace.get(at)?.head.id ?? null,
    beside: (at) => ({ yields: yieldsOf(at), ...(at === 0 && moves.length > 0 ? { moves } : {}) }),
  };
}

/** A club from parts: new, with another head, or with another shaft; the heads of all open orders allotted together. */
export function planParts(reader: Reader, order: OrderToPlan & { readonly kind: PartsKind }): readonly PlannedClub[] {
  const asked: Asked = { ...order, tolerances: selectionTolerances(reader) };
  const { request, truckId, now, kind, replaces, headSerial } = asked;
  const hand = playerById(reader, request.player)?.hand ?? "right";
  const own = replaces === undefined ? [] : [replaces];
  const free = partsInReach(reader, { truckId, playerId: request.player, pastOrders: own });
  const all = request.clubs.flatMap((club) =>
    Array.from({ length: request.count }, (_, index) => wantedClub(reader, asked, hand, free, club, index + 1)),
  );
  const floors = floorsAt(reader, truckId, now);
  const chosen = headSerial === undefined ? null : (free.heads.find(({ serial }) => serial === headSerial)?.id ?? null);
  const first = planInTurn(all, asked, free, () => chosen);
  const models = new Set(first.flatMap(({ plan }) => (plan === null ? [] : [plan.choice.head.model.name])));
  const rivals = kind === "reshaft" || chosen !== null ? [] : rivalSheets(reader, truckId, now, { models, hand }, replaces ?? null);
  const confirmed = rivals.filter(({ order }) => order.state === "confirmed").map(({ order }) => order.id);
  const inPlay = rivals.length === 0 ? free : partsInReach(reader, { truckId, playerId: request.player, pastOrders: [...own, ...confirmed] });
  /** Each on its own, so that every club names the heads it would like best. */
  const alone = rivals.length === 0 && all.length === 1 ? [] : all.map((wanted) => planWanted(wanted, asked, inPlay, null, HEADS_COMPARED).plan);
  const given = kind === "reshaft" || chosen !== null ? nothingAllotted : allotted(asked, alone, rivals, inPlay);
  const isAllotted = alone.some((_, at) => given.headOf(at) !== null);
  const parts = isAllotted ? inPlay : free;
  const planned = isAllotted ? planInTurn(all, asked, parts, (wanted) => given.headOf(all.indexOf(wanted))) : first;
  return all.map((wanted, at): PlannedClub => {
    const { club, copy, reference } = wanted;
    const { plan, faults } = planned[at] ?? { plan: null, faults: wanted.faults };
    const route = routeOfClub(kind, club, { plan, reference, clubsInSet: clubsInSet(request.clubs) }, floors);
    return { club, copy, reference, route, plan, service: null, beside: given.beside(at), faults };
  });
}
