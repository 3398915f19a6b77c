import type { Bag, SpecClub } from "../../core/bag/specClub.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { changeOrder, type OrderRow, sheetsOf } from "../../db/repositories/orders.ts";
import { currentEvent } from "../../db/repositories/people.ts";
import { addSpec, liveSpec } from "../../db/repositories/week.ts";
import type { Tx } from "../../db/write.ts";
import { clubOfSheet } from "./clubOfSheet.ts";
import { finishWalk } from "./pressStep.ts";

export const takers = ["player", "caddie", "rep", "locker", "courier"] as const;
export type Taker = (typeof takers)[number];
export const bagAnswers = ["in the bag", "backup", "testing", "coming back"] as const;
export type BagAnswer = (typeof bagAnswers)[number];

export type HandedOver = { readonly kind: "handed-over"; readonly order: OrderRow } | { readonly kind: "refused"; readonly order: OrderRow };

/** Records who took the club: it is out with the player, and not in the bag before the rep says so. */
export function handOver(tx: Tx, order: OrderRow, taker: Taker, personId: Id<"person">, now: Instant): HandedOver {
  if (order.state !== "ready") {
    return { kind: "refused", order };
  }
  finishWalk(tx, order, personId, now);
  return { kind: "handed-over", order: changeOrder(tx, order.id, { state: "outWithPlayer", takenBy: taker }) };
}

export type Answered =
  | { readonly kind: "published"; readonly order: OrderRow; readonly version: number }
  | { readonly kind: "noted"; readonly order: OrderRow }
  | { readonly kind: "refused"; readonly order: OrderRow };

const replaced = (clubs: readonly SpecClub[], club: SpecClub): readonly SpecClub[] =>
  clubs.some((known) => known.club === club.club) ? clubs.map((known) => (known.club === club.club ? club : known)) : [...clubs, club];

function bagWith(bag: Bag, club: SpecClub, answer: "in the bag" | "backup"): Bag {
  return answer === "backup" ? { ...bag, backups: replaced(bag.backups, club) } : { ...bag, clubs: replaced(bag.clubs, club) };
}

/**
 * Takes the rep's answer: only "in the bag" (and a finished backup) publishes a spec version.
 *
 * @param tx - the transaction
 * @param order - as read in it
 * @param answer - what became of the club
 * @param personId - who says so
 * @param now - the moment
 */
export function answerBag(tx: Tx, order: OrderRow, answer: BagAnswer, personId: Id<"person">, now: Instant): Answered {
  if (order.state !== "outWithPlayer") {
    return { kind: "refused", order };
  }
  if (answer !== "in the bag" && answer !== "backup") {
    return { kind: "noted", order: changeOrder(tx, order.id, { answer, state: answer === "coming back" ? "ready" : "outWithPlayer" }) };
  }
  const built = sheetsOf(tx, order).flatMap((sheet) => clubOfSheet(tx, sheet) ?? []);
  const closed = changeOrder(tx, order.id, { state: "closed", answer });
  if (built.length === 0) {
    return { kind: "noted", order: closed };
  }
  const before: Bag = liveSpec(tx, order.playerId)?.bag ?? { version: 1, clubs: [], backups: [] };
  const bag = built.reduce((all, club) => bagWith(all, club, answer), before);
  const current = currentEvent(tx, order.truckId, now);
  const version = addSpec(tx, {
    playerId: order.playerId,
    validFrom: now,
    personId,
    eventId: order.eventId,
    takenAt: current?.event.name ?? "",
    bag,
  });
  return { kind: "published", order: closed, version };
}
