import { isDeepStrictEqual } from "node:util";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import { endReservations } from "../../db/repositories/holds.ts";
import { addDraft, addRevision, changeOrder, type OrderRow, recentOrdersOf, requestOf, touchBench } from "../../db/repositories/orders.ts";
import { currentEvent, nextTeeTime } from "../../db/repositories/people.ts";
import { addSheet, carrySheets, sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader, Tx } from "../../db/write.ts";
import type { PlannedClub } from "./plannedClub.ts";

const MS_PER_MIN = 60_000;
const SAME_ORDER_WINDOW_MS = 30 * MS_PER_MIN;

/** When the club must be in hand: a clock time, or counted from the player's next tee time. */
export type Deadline =
  | { readonly kind: "none" }
  | { readonly kind: "at"; readonly at: Instant }
  | { readonly kind: "no-tee-time" }
  | { readonly kind: "past"; readonly at: Instant }
  | { readonly kind: "after-roll-out"; readonly at: Instant; readonly rollOutAt: Instant };

/**
 * Settles an order's `by` against the tee sheet, the clock and the truck's roll-out.
 *
 * @param reader - database or transaction
 * @param request - what is asked for
 * @param truckId - the truck that builds
 * @param now - the moment
 */
export function deadlineOf(reader: Reader, request: BuildRequest, truckId: Id<"truck">, now: Instant): Deadline {
  const wish = request.by?.value;
  if (wish === undefined || wish.kind === "now") {
    return { kind: "none" };
  }
  const current = currentEvent(reader, truckId, now);
  const tee = wish.kind === "tee" && current !== null ? nextTeeTime(reader, current.event.id, request.player, now) : null;
  if (wish.kind === "tee" && tee === null) {
    return { kind: "no-tee-time" };
  }
  const at = wish.kind === "at" ? wish.at : instant((tee ?? now) + wish.offsetMin * MS_PER_MIN);
  if (at <= now) {
    return { kind: "past", at };
  }
  const isLeft = current !== null && at > current.rollOutAt && request.to !== "courier";
  return isLeft ? { kind: "after-roll-out", at, rollOutAt: current.rollOutAt } : { kind: "at", at };
}

/** What is asked, remarks left out; of a repair or sole work the note is what is asked. */
const asked = (request: BuildRequest): BuildRequest => (request.kind === "repair" || request.kind === "grind" ? request : { ...request, note: null });

/** The same wish a moment ago, or null. */
export function sameOrder(reader: Reader, request: BuildRequest, now: Instant): OrderRow | null {
  const recent = recentOrdersOf(reader, request.player, instant(now - SAME_ORDER_WINDOW_MS));
  return recent.find((order) => order.state !== "withdrawn" && isDeepStrictEqual(asked(requestOf(reader, order).request), asked(request))) ?? null;
}

interface NewDraft {
  readonly request: BuildRequest;
  readonly asWritten: string;
  readonly planned: readonly PlannedClub[];
  readonly byAt: Instant | null;
  readonly truckId: Id<"truck">;
  readonly eventId: Id<"event">;
  readonly personId: Id<"person">;
  readonly channel: string;
  readonly sourceKey: string;
  readonly now: Instant;
}

function addSheets(tx: Tx, order: OrderRow, planned: readonly PlannedClub[]): void {
  for (const { club, copy, plan, service, reference, beside, route } of planned) {
    const { playableAfterBondMin, playableAfterGripMin } = route;
    const sheet = { version: 1, plan, service, reference, ...beside, playableAfterBondMin, playableAfterGripMin } as const;
    addSheet(tx, order, { club, copy }, sheet, route.steps);
  }
}

/** Opens a draft with its sheets; nothing is held yet. */
export function draftOrder(tx: Tx, draft: NewDraft): OrderRow {
  const { request, asWritten, planned, byAt, truckId, eventId, personId, channel, sourceKey, now } = draft;
  const order = addDraft(
    tx,
    { truckId, eventId, playerId: request.player, postedById: personId, sourceKey, channel, byAt, urgent: request.urgent, createdAt: now },
    request,
    asWritten,
  );
  addSheets(tx, order, planned);
  return order;
}

/**
 * Puts a new request and new sheets in place of a draft's. A confirmed order whose first step has not begun gives its
 * parts back and is a draft again, under its number.
 */
export function redraftOrder(
  tx: Tx,
  order: OrderRow,
  change: Pick<NewDraft, "request" | "asWritten" | "planned" | "byAt" | "personId" | "now">,
): OrderRow {
  const { request } = change;
  for (const sheet of sheetsOf(tx, order)) {
    endReservations(tx, sheet.id, "released");
  }
  touchBench(tx, order.truckId);
  const changed = changeOrder(tx, order.id, {
    state: "draft",
    nudgedAt: null,
    createdAt: change.now,
    revision: order.revision + 1,
    playerId: request.player,
    kind: request.kind,
    clubs: JSON.stringify(request.clubs),
    byAt: change.byAt,
    urgent: request.urgent,
  });
  addRevision(tx, changed, request, change.asWritten, change.personId, change.now);
  addSheets(tx, changed, change.planned);
  return changed;
}

/** Writes a revision of an order under way: the request changes, what is built so far stays on its sheet. */
export function reviseUnderWay(tx: Tx, order: OrderRow, change: Pick<NewDraft, "request" | "asWritten" | "byAt" | "personId" | "now">): OrderRow {
  const changed = changeOrder(tx, order.id, { revision: order.revision + 1, byAt: change.byAt, urgent: change.request.urgent });
  addRevision(tx, changed, change.request, change.asWritten, change.personId, change.now);
  carrySheets(tx, order.id, order.revision, changed.revision);
  return changed;
}
