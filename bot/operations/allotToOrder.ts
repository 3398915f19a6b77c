import type { PartsInReach } from "../../core/buildSheet/parts.ts";
import type { ClubPlan, HeadChoice } from "../../core/buildSheet/plan.ts";
import type { Id } from "../../core/kinds.ts";
import { allotHeads } from "../../core/selection/allotHeads.ts";
import type { HeadWanted } from "../../core/selection/headWanted.ts";
import type { SelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import type { SheetMove, SheetPlan } from "../../db/repositories/sheetPlan.ts";
import type { Reader } from "../../db/write.ts";
import { orderWeight } from "./orderWeight.ts";
import { planRival } from "./planRival.ts";
import { withAnyHead, withHead } from "./planWanted.ts";
import type { RivalSheet } from "./rivalSheets.ts";
import type { PartsAsked } from "./wantedClub.ts";

/** What the clubs of an order get, each by its place in the order. */
export interface AllottedToOrder {
  readonly headOf: (at: number) => Id<"head"> | null;
  readonly yieldsOf: (at: number) => NonNullable<SheetPlan["yields"]> | null;
  /** Confirmed sheets that take another head for it. */
  readonly moves: readonly SheetMove[];
}

export const nothingAllotted: AllottedToOrder = { headOf: () => null, yieldsOf: () => null, moves: [] };

/** Own clubs are known by their place in the order, the others by their sheet. */
type Key = { readonly own: number } | { readonly rival: RivalSheet };

const SCORE_SLACK = 1e-9;

/**
 * A club's heads with what each costs it. What a gauge cannot tell apart costs the same, so that a standard mark, or less to
 * bend, is not given up for less than that; a confirmed sheet may get only what is no further from what was written.
 */
function choicesOf(heads: readonly HeadChoice[], held: number | null, { scoreBand }: SelectionTolerances): readonly HeadChoice[] {
  return heads
    .filter(({ score }) => held === null || score <= held + SCORE_SLACK)
    .map((one) => ({ ...one, score: Math.floor(one.score / scoreBand + SCORE_SLACK) * scoreBand }));
}

interface InPlay {
  readonly tolerances: SelectionTolerances;
  readonly inPlay: PartsInReach;
}

/** What a rival would take. A confirmed one that cannot be planned any more keeps its head; such a draft has no say. */
function wantedByRival(reader: Reader, rival: RivalSheet, how: InPlay): readonly HeadWanted<Key>[] {
  const { order, plan } = rival;
  const isConfirmed = order.state === "confirmed";
  const anew = planRival(reader, rival, how, withAnyHead);
  if (anew === null && !isConfirmed) {
    return [];
  }
  const { head, score } = plan.choice;
  const heads = anew === null ? [plan.choice] : [anew.choice, ...anew.runnersUp];
  return [
    {
      key: { rival },
      weight: orderWeight(order),
      choices: choicesOf(heads, isConfirmed ? score : null, how.tolerances),
      held: isConfirmed ? { headId: head.id, score } : null,
    },
  ];
}

function moveOf(reader: Reader, rival: RivalSheet, headId: Id<"head">, how: InPlay): readonly SheetMove[] {
  const { order, sheet, plan: before } = rival;
  if (order.state !== "confirmed" || headId === before.choice.head.id) {
    return [];
  }
  const plan = planRival(reader, rival, how, withHead(headId));
  return plan === null ? [] : [{ order: order.id, version: order.version, sheet: sheet.id, number: order.number, plan }];
}

/** Whether two clubs want one head: else every club has its best already, and nobody is asked. */
function isContested(best: readonly (ClubPlan | null)[], rivals: readonly RivalSheet[]): boolean {
  const wanted = best.flatMap((plan) => plan?.choice.head.id ?? []);
  return new Set(wanted).size < wanted.length || rivals.some(({ plan }) => wanted.includes(plan.choice.head.id));
}

/**
 * Which of the heads wanted by several open clubs goes to which, at the least total loss.
 *
 * @param best - the plan of each club of the order as if it were alone; null where there is none
 * @param rivals - those who were here before: among equals they keep what they have
 * @param inPlay - the heads of all of them, and what goes with heads
 */
export function allotToOrder(
  reader: Reader,
  asked: PartsAsked,
  best: readonly (ClubPlan | null)[],
  rivals: readonly RivalSheet[],
  inPlay: PartsInReach,
): AllottedToOrder {
  if (!isContested(best, rivals)) {
    return nothingAllotted;
  }
  const how = { tolerances: asked.tolerances, inPlay };
  const weight = orderWeight({ urgent: asked.request.urgent, byAt: asked.request.by === null ? null : asked.now });
  const wanted: readonly HeadWanted<Key>[] = [
    ...rivals.flatMap((rival) => wantedByRival(reader, rival, how)),
    ...best.flatMap((plan, own) =>
      plan === null ? [] : [{ key: { own }, weight, choices: choicesOf([plan.choice, ...plan.runnersUp], null, asked.tolerances) }],
    ),
  ];
  const { allotted } = allotHeads(wanted);
  const given = allotted.flatMap(({ key, choice }) => (choice === null ? [] : [{ key, headId: choice.head.id }]));
  const own = new Map(given.flatMap(({ key, headId }) => ("own" in key ? [[key.own, headId] as const] : [])));
  const toRivals = given.flatMap(({ key, headId }) => ("rival" in key ? [{ rival: key.rival, headId }] : []));
  return {
    headOf: (at) => own.get(at) ?? null,
    yieldsOf: (at) => {
      const nearest = best[at]?.choice.head;
      const taker = toRivals.find(({ headId }) => headId === nearest?.id);
      return nearest === undefined || taker === undefined ? null : { serial: nearest.serial, toOrder: taker.rival.order.number };
    },
    moves: toRivals.flatMap(({ rival, headId }) => moveOf(reader, rival, headId, how)),
  };
}
