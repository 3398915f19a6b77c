import type { Bag, SpecClub } from "../../core/bag/specClub.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { appendAudit } from "../../db/repositories/audit.ts";
import { changeOrder, type OrderRow, requestOf } from "../../db/repositories/orders.ts";
import { currentEvent } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import { addSpec, liveSpec } from "../../db/repositories/week.ts";
import type { Tx } from "../../db/write.ts";
import { clubOfSheet } from "./clubOfSheet.ts";
import { finishWalk } from "./finishSteps.ts";
import { type ListEntry, listEntries } from "./listForPlay.ts";

export const takers = ["player", "caddie", "rep", "locker", "courier"] as const;
export type Taker = (typeof takers)[number];
export const bagAnswers = ["in the bag", "backup", "testing", "coming back"] as const;
export type BagAnswer = (typeof bagAnswers)[number];

export type HandedOver =
  /** `sets`: glue or a grip was put on, and may still set. */
  | { readonly kind: "handed-over"; readonly order: OrderRow; readonly sets: boolean }
  | { readonly kind: "refused"; readonly order: OrderRow }
  /** Nobody has looked the head up in the list for play since this event's week began. */
  | { readonly kind: "ask-list"; readonly order: OrderRow; readonly entry: ListEntry }
  /** The head is not on the list: for testing only, unless the lead takes it on with a reason. */
  | { readonly kind: "not-listed"; readonly order: OrderRow; readonly entry: ListEntry };

interface HandingOver {
  readonly personId: Id<"person">;
  readonly now: Instant;
  /** The lead's reason to let an unlisted head out of the truck to be played; null from anyone else. */
  readonly exception: string | null;
}

/**
 * Records who took the club: it is out with the player, and not in the bag before the rep says so.
 *
 * Where the event keeps a list for play, a driver head is asked after before it leaves; a club out on test is not.
 */
export function handOver(tx: Tx, order: OrderRow, taker: Taker, { personId, now, exception }: HandingOver): HandedOver {
  if (order.state !== "ready") {
    return { kind: "refused", order };
  }
  const asked = listEntries(tx, order).filter(({ forTesting }) => !forTesting);
  const notListed = asked.find(({ listed }) => listed === false);
  if (notListed !== undefined && exception === null) {
    return { kind: "not-listed", order, entry: notListed };
  }
  const unknown = asked.find(({ listed, isFresh }) => listed !== false && !isFresh);
  if (unknown !== undefined) {
    return { kind: "ask-list", order, entry: unknown };
  }
  if (notListed !== undefined && exception !== null) {
    const body = { model: notListed.model, reason: exception };
    appendAudit(tx, { at: now, personId, action: "order.handover.unlisted", subject: `order:${order.id}`, body, playerId: order.playerId });
  }
  finishWalk(tx, order, { personId, now });
  const sets = sheetsOf(tx, order).some(({ steps }) => steps.some(({ kind }) => kind === "bondSet" || kind === "gripSet"));
  return { kind: "handed-over", order: changeOrder(tx, order.id, { state: "outWithPlayer", takenBy: taker, answer: null }), sets };
}

export type Answered =
  | { readonly kind: "published"; readonly order: OrderRow; readonly version: number }
  | { readonly kind: "noted"; readonly order: OrderRow }
  | { readonly kind: "refused"; readonly order: OrderRow };

const replaced = (clubs: readonly SpecClub[], club: SpecClub): readonly SpecClub[] =>
  clubs.some((known) => known.club === club.club) ? clubs.map((known) => (known.club === club.club ? club : known)) : [...clubs, club];

/** A backup that is played is no backup any more. */
function bagWith(bag: Bag, club: SpecClub, answer: "in the bag" | "backup"): Bag {
  if (answer === "backup") {
    return { ...bag, backups: replaced(bag.backups, club) };
  }
  const isSame = (known: SpecClub): boolean => known.club === club.club && club.headSerial !== null && known.headSerial === club.headSerial;
  /** What was noted of a backup says where it lay. */
  const played = bag.backups.some(isSame) ? { ...club, note: null } : club;
  return { ...bag, clubs: replaced(bag.clubs, played), backups: bag.backups.filter((known) => !isSame(known)) };
}

const withoutClubs = (bag: Bag, out: readonly string[]): Bag => ({ ...bag, clubs: bag.clubs.filter(({ club }) => !out.includes(club)) });

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
  const { out } = requestOf(tx, order).request;
  const start = answer === "in the bag" ? withoutClubs(before, out) : before;
  const bag = built.reduce((all, club) => bagWith(all, club, answer), start);
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
