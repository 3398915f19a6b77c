import type { SpecClub } from "../../core/bag/specClub.ts";
import type { BuildRequest } from "../../core/buildSheet/buildRequest.ts";
import type { ClubName, Id, Instant } from "../../core/kinds.ts";
import { orderByNumber } from "../../db/repositories/orders.ts";
import { currentEvent } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import { clubOfSheet } from "./clubOfSheet.ts";

/** The club an order leans on: the one named after `like`; work on a club that exists leans on the gamer, else the backup. */
export function referenceOf(reader: Reader, request: BuildRequest, club: ClubName, truckId: Id<"truck">, now: Instant): SpecClub | null {
  const bag = liveSpec(reader, request.player)?.bag ?? null;
  const gamer = bag?.clubs.find((known) => known.club === club) ?? null;
  const backup = bag?.backups.find((known) => known.club === club) ?? null;
  const { like } = request;
  if (like === null) {
    return request.kind === "build" ? null : request.purpose === "backup" ? backup : (gamer ?? backup);
  }
  if (like.from === "gamer") {
    return gamer;
  }
  if (like.from === "backup") {
    return backup;
  }
  const order = orderByNumber(reader, truckId, currentEvent(reader, truckId, now)?.event.id ?? null, like.number);
  const sheet = order === null ? undefined : sheetsOf(reader, order).find((known) => known.club === club);
  return order === null || sheet === undefined ? null : clubOfSheet(reader, sheet);
}
