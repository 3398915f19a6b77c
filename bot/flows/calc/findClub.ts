import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { Hand } from "../../../core/kinds.ts";
import { playerById } from "../../../db/repositories/people.ts";
import { sheetsOf } from "../../../db/repositories/sheets.ts";
import { liveSpec } from "../../../db/repositories/week.ts";
import type { ClubRef } from "../../boundary/calc/clubRefAt.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply, Role } from "../../chat/types.ts";
import { clubOfSheet } from "../../operations/clubOfSheet.ts";
import { notOnRecordReply, restrictedClubReply } from "../../replies/calc/clubRefusals.ts";
import { refusalCard } from "../../replies/refusals.ts";
import { clubWords } from "../../replies/shown.ts";
import { findOrder } from "../findOrder.ts";

export type FoundClub =
  | { readonly kind: "found"; readonly club: SpecClub; readonly hand: Hand; readonly shown: string; readonly input: Understood }
  | { readonly kind: "refused"; readonly reply: Reply };

const seesSpecs: readonly Role[] = ["viewer", "rep", "technician", "lead"];
const seesOrders: readonly Role[] = ["rep", "technician", "lead"];

/**
 * Finds the club of the record that a calculation is about, for whoever may see it: live specs for a viewer and up,
 * orders for the team, restricted players for the lead.
 *
 * @throws {DomainError} `order-unknown` when there is no such order here
 */
export function findClub(ref: ClubRef, context: Context): FoundClub {
  const allowed = ref.kind === "order" ? seesOrders : seesSpecs;
  if (!allowed.some((role) => context.actor.roles.includes(role))) {
    return { kind: "refused", reply: refusalCard(context.actor, ref.kind === "order" ? "A club of an order" : "A club of the record", allowed) };
  }
  return ref.kind === "order" ? clubOfOrder(ref.number, context) : clubOfBag(ref, context);
}

function clubOfBag({ player, club, from }: Extract<ClubRef, { kind: "bag" }>, context: Context): FoundClub {
  const row = context.read((reader) => playerById(reader, player.id));
  if (row === null || isHidden(row.restrictedCode, context)) return refused(restrictedClubReply());
  const bag = context.read((reader) => liveSpec(reader, player.id))?.bag;
  const known = (from === "backup" ? bag?.backups : bag?.clubs)?.find((one) => one.club === club);
  const shown = `${row.restrictedCode ?? row.name ?? "erased"} ${clubWords(club)}${from === "backup" ? " backup" : ""}`;
  return known === undefined ? refused(notOnRecordReply(shown)) : found(known, row.hand, shown);
}

function clubOfOrder(number: number, context: Context): FoundClub {
  const order = context.read((reader) => findOrder(reader, context, `${number}`));
  const row = context.read((reader) => playerById(reader, order.playerId));
  if (row === null || isHidden(row.restrictedCode, context)) return refused(restrictedClubReply());
  const [sheet] = context.read((reader) => sheetsOf(reader, order));
  const club = sheet === undefined ? null : context.read((reader) => clubOfSheet(reader, sheet));
  const shown = `order ${number}`;
  return club === null ? refused(notOnRecordReply(shown)) : found(club, row.hand, `${shown} ${clubWords(club.club)}`);
}

const found = (club: SpecClub, hand: Hand, shown: string): FoundClub => ({
  kind: "found",
  club,
  hand,
  shown,
  input: { name: "club", values: [{ written: shown, unit: "" }], between: ",", assumed: false },
});
const isHidden = (restrictedCode: string | null, { actor }: Context): boolean => restrictedCode !== null && !actor.roles.includes("lead");
const refused = (reply: Reply): FoundClub => ({ kind: "refused", reply });
