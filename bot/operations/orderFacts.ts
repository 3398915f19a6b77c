import { defaultCheckTolerances } from "../../core/bag/checkTolerances.ts";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import { type FinalCheck, finalCheck } from "../../core/buildSheet/finalCheck.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { ClubName, Hand, Id, Instant } from "../../core/kinds.ts";
import { measuredOf, type OrderRow, type OrderState, requestOf, type SheetRow, type StepRow, sheetsOf } from "../../db/repositories/orders.ts";
import { currentEvent, personName, playerById } from "../../db/repositories/people.ts";
import { modelsOf } from "../../db/repositories/stock.ts";
import { owedMarkings } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import { type OrderFault, planOrder } from "./planOrder.ts";

export interface ClubFacts {
  readonly club: ClubName;
  readonly plan: ClubPlan | null;
  /** The head's model as it may be shown: its code word while it is unreleased. */
  readonly headShown: string | null;
  readonly steps: readonly StepRow[];
  readonly check: FinalCheck | null;
  readonly measured: readonly { readonly quantity: string; readonly value: number; readonly asWritten: string }[];
}

/** All that a card about one order shows. */
export interface OrderFacts {
  readonly order: Id<"order">;
  readonly number: number;
  readonly version: number;
  readonly state: OrderState;
  readonly kind: BuildRequest["kind"];
  readonly heldReason: string | null;
  readonly player: string;
  readonly hand: Hand;
  /** Named only when it is not the truck's current event. */
  readonly olderEvent: string | null;
  readonly zone: string;
  readonly request: BuildRequest;
  readonly asWritten: string;
  readonly postedBy: { readonly id: Id<"person">; readonly name: string };
  readonly byAt: Instant | null;
  readonly likelyAt: Instant | null;
  readonly promiseAt: Instant | null;
  readonly playableAt: Instant | null;
  readonly takenBy: string | null;
  readonly answer: string | null;
  readonly clubs: readonly ClubFacts[];
  /** Why a draft cannot be built as it is written. */
  readonly faults: readonly OrderFault[];
  /** Markings owed on the clubs of this order. */
  readonly owed: readonly { readonly id: number; readonly text: string; readonly club: string }[];
}

/** The check of a sheet's club against what was written, or null while nothing is measured or there is no plan. */
export function checkOf(reader: Reader, order: OrderRow, sheet: SheetRow): FinalCheck | null {
  const { plan } = sheet.sheetPlan;
  const rows = measuredOf(reader, sheet.id);
  if (plan === null || rows.length === 0) {
    return null;
  }
  const measured = Object.fromEntries(rows.map((row) => [row.quantity, row.value]));
  return finalCheck({ target: plan.target, plan, kind: order.kind === "swap" ? "swap" : "build", measured, tolerances: defaultCheckTolerances });
}

/** Reads all that a card about one order shows. */
export function orderFacts(reader: Reader, order: OrderRow, now: Instant): OrderFacts {
  const { request, asWritten } = requestOf(reader, order);
  const current = currentEvent(reader, order.truckId, now);
  const player = playerById(reader, order.playerId);
  const models = modelsOf<{ readonly name: string }>(reader, "head");
  const shown = (name: string): string => models.find((model) => model.name === name)?.restrictedCode ?? name;
  const clubs = sheetsOf(reader, order).map((sheet): ClubFacts => {
    const { plan } = sheet.sheetPlan;
    return {
      club: sheet.club,
      plan,
      headShown: plan === null ? null : shown(plan.choice.head.model.name),
      steps: sheet.steps,
      check: checkOf(reader, order, sheet),
      measured: measuredOf(reader, sheet.id),
    };
  });
  return {
    order: order.id,
    number: order.number,
    version: order.version,
    state: order.state,
    kind: order.kind,
    heldReason: order.heldReason,
    player: player?.restrictedCode ?? player?.name ?? "erased",
    hand: player?.hand ?? "right",
    olderEvent: current !== null && current.event.id !== order.eventId ? "an earlier event" : null,
    zone: current?.event.zone ?? "UTC",
    request,
    asWritten,
    postedBy: { id: order.postedById, name: personName(reader, order.postedById) },
    byAt: order.byAt,
    likelyAt: order.likelyAt,
    promiseAt: order.givenPromiseAt,
    playableAt: order.playableAt,
    takenBy: order.takenBy,
    answer: order.answer,
    clubs,
    faults:
      order.state === "draft" && clubs.some(({ plan }) => plan === null)
        ? planOrder(reader, request, order.truckId, now).flatMap((planned) => planned.faults)
        : [],
    owed: owedMarkings(reader, order.playerId).filter((row) => request.clubs.some((club) => club === row.club)),
  };
}
