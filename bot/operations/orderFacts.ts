import type { CheckTolerances } from "../../core/bag/checkTolerances.ts";
import type { FinishedClub } from "../../core/bag/finishedClub.ts";
import type { Bag, SpecClub } from "../../core/bag/specClub.ts";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { FinalCheck } from "../../core/buildSheet/finalCheck.ts";
import type { Looks } from "../../core/buildSheet/lookRows.ts";
import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { ServicePlan } from "../../core/buildSheet/servicePlan.ts";
import type { ClubName, Hand, Id, Instant } from "../../core/kinds.ts";
import { measuredOf } from "../../db/repositories/measurements.ts";
import { type OrderRow, type OrderState, requestOf } from "../../db/repositories/orders.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { allTrucks, currentEvent, personName, playerById } from "../../db/repositories/people.ts";
import { type StepRow, sheetsOf } from "../../db/repositories/sheets.ts";
import { liveSpec, owedMarkings } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import { type AtBench, atBench } from "./atBench.ts";
import { awaitsClub } from "./awaitsClub.ts";
import { checkOfSheet, heldAgainst } from "./checkOfSheet.ts";
import { type Lacking, lackingAt } from "./lackingAt.ts";
import { type ListEntry, listEntries } from "./listForPlay.ts";
import type { OrderFault } from "./plannedClub.ts";
import { planOrder } from "./planOrder.ts";
import { checkTolerances } from "./shopTolerances.ts";

export interface ClubFacts {
  readonly club: ClubName;
  /** Which of several alike, from 1. */
  readonly copy: number;
  readonly plan: ClubPlan | null;
  readonly service: ServicePlan | null;
  /** The club it leans on or works on, as on record when the sheet was made. */
  readonly reference: SpecClub | null;
  /** The finished club offered for one that broke. */
  readonly finished: FinishedClub | null;
  /** A nearer head that goes to another open order. */
  readonly yields: { readonly serial: string; readonly toOrder: number } | null;
  /** The head's model as it may be shown: its code word while it is unreleased. */
  readonly headShown: string | null;
  readonly steps: readonly StepRow[];
  readonly check: FinalCheck | null;
  /** What must look as written before the club is ready. */
  readonly looksWanted: Looks;
  readonly measured: readonly Reading[];
  readonly found: readonly Reading[];
  /** When this club is likely in hand, of an order of several. */
  readonly likelyAt: Instant | null;
}

interface Reading {
  readonly quantity: string;
  readonly value: number;
  readonly asWritten: string;
}

/** Why one club of a draft cannot be built or done as it is written. */
interface ClubFault {
  readonly club: ClubName;
  readonly copy: number;
  readonly fault: OrderFault;
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
  /** The truck that does the work. */
  readonly truck: string;
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
  /** Why a draft cannot be built as it is written, club by club. */
  readonly faults: readonly ClubFault[];
  /** Its work is on a club that is not in the truck yet. */
  readonly awaitsClub: boolean;
  /** When that club, or a part it is short of, is said to come. */
  readonly expectedAt: Instant | null;
  readonly atBench: AtBench;
  /** Nobody has said who brings that club. */
  readonly bringerUnsaid: boolean;
  /** How many clubs the bag holds once this is in it; null where no club goes in or out. */
  readonly bagCount: number | null;
  /** Shafts in the player's bag: a usual start for a trial. */
  readonly playedShafts: readonly string[];
  /** Nobody at the bench, or nobody with a skill it asks for. */
  readonly lacking: readonly Lacking[];
  /** What the clubs are checked within. */
  readonly tolerances: CheckTolerances;
  /** The list for play at this event: what is known of the head. */
  readonly listEntries: readonly ListEntry[];
  /** Markings owed on the clubs of this order. */
  readonly owed: readonly { readonly id: number; readonly text: string; readonly club: string }[];
}

/** How many clubs a bag holds after a set change; null for an order that changes no count. */
function bagCount(bag: Bag, { clubs, out }: BuildRequest): number | null {
  if (out.length === 0) {
    return null;
  }
  const left = bag.clubs.map(({ club }) => club).filter((club) => !out.includes(club));
  return new Set([...left, ...clubs]).size;
}

/** A club without a plan says why; sheets do not keep it, as it changes with the stock. */
function faultsOf(reader: Reader, order: OrderRow, request: BuildRequest, clubs: readonly ClubFacts[], now: Instant): readonly ClubFault[] {
  const isPlanned = ({ plan, service }: ClubFacts): boolean => plan !== null || service !== null || request.kind === "broke";
  return clubs.every(isPlanned)
    ? []
    : planOrder(reader, { request, truckId: order.truckId, now, replaces: order.id }).flatMap(({ club, copy, faults }) =>
        faults.map((fault) => ({ club, copy, fault })),
      );
}

/** Reads all that a card about one order shows. */
export function orderFacts(reader: Reader, order: OrderRow, now: Instant): OrderFacts {
  const { request, asWritten } = requestOf(reader, order);
  const current = currentEvent(reader, order.truckId, now);
  const player = playerById(reader, order.playerId);
  const models = modelsOf<{ readonly name: string }>(reader, "head");
  const shown = (name: string): string => models.find((model) => model.name === name)?.restrictedCode ?? name;
  const clubs = sheetsOf(reader, order).map((sheet): ClubFacts => {
    const { plan, service = null, reference = null, finished = null, yields = null } = sheet.sheetPlan;
    const held = heldAgainst(sheet);
    return {
      club: sheet.club,
      copy: sheet.copy,
      plan,
      service,
      reference,
      finished,
      yields,
      headShown: plan === null ? null : shown(plan.choice.head.model.name),
      steps: sheet.steps,
      check: checkOfSheet(reader, sheet),
      looksWanted: held?.looksMust === true ? held.looksWanted : {},
      measured: measuredOf(reader, sheet.id),
      found: measuredOf(reader, sheet.id, "found"),
      likelyAt: sheet.likelyAt,
    };
  });
  const bag = liveSpec(reader, order.playerId)?.bag ?? null;
  const awaits = awaitsClub(request, order);
  const routeSteps = clubs.flatMap(({ steps }) => steps.map(({ route }) => route));
  return {
    order: order.id,
    number: order.number,
    version: order.version,
    state: order.state,
    kind: order.kind,
    heldReason: order.heldReason,
    player: player?.restrictedCode ?? player?.name ?? "erased",
    hand: player?.hand ?? "right",
    truck: allTrucks(reader).find(({ id }) => id === order.truckId)?.name ?? "",
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
    faults: order.state === "draft" ? faultsOf(reader, order, request, clubs, now) : [],
    awaitsClub: awaits,
    expectedAt: order.expectedAt,
    atBench: atBench(reader, order),
    bringerUnsaid: awaits && request.broughtBy === null,
    bagCount: bag === null ? null : bagCount(bag, request),
    playedShafts: [...new Set((bag?.clubs ?? []).flatMap(({ shaftModel }) => shaftModel ?? []))],
    lacking: order.givenPromiseAt === null ? lackingAt(reader, order.truckId, routeSteps, now) : [],
    tolerances: checkTolerances(reader),
    listEntries: order.state === "ready" ? listEntries(reader, order) : [],
    owed: owedMarkings(reader, order.playerId).filter((row) => request.clubs.some((club) => club === row.club)),
  };
}
