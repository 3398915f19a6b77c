import type { FinishedClub } from "../../core/bag/finishedClub.ts";
import type { SpecClub } from "../../core/bag/specClub.ts";
import type { ClubName, Id } from "../../core/kinds.ts";
import { openOrdersOf, requestOf } from "../../db/repositories/orders.ts";
import { allTrucks } from "../../db/repositories/people.ts";
import { placesIn } from "../../db/repositories/places.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import { clubOfSheet } from "./clubOfSheet.ts";

/** Where a backup lies: the one drawer with the player's name, else as noted with it, else the player's one bin. */
function lying(reader: Reader, playerId: Id<"player">, { note }: SpecClub): FinishedClub["where"] {
  const own = allTrucks(reader).flatMap(({ id, name }) =>
    placesIn(reader, id)
      .filter((place) => place.playerId === playerId)
      .map(({ kind, label }) => ({ kind, label, truck: name })),
  );
  const onlyOf = (wanted: string) => {
    const [only, ...others] = own.filter(({ kind }) => kind === wanted);
    return others.length > 0 ? undefined : only;
  };
  const known = onlyOf("drawer") ?? (note === null ? onlyOf("playerBin") : undefined);
  return known === undefined ? { kind: "drawer", place: note, truck: null } : { kind: "drawer", place: known.label, truck: known.truck };
}

/** New clubs that are ready in any truck, or out with the player to be tried. Work on a club that exists makes no other one. */
function ofOrders(reader: Reader, playerId: Id<"player">, club: ClubName): readonly FinishedClub[] {
  const trucks = new Map(allTrucks(reader).map(({ id, name }) => [id, name]));
  return openOrdersOf(reader, playerId)
    .filter(({ kind, state }) => (kind === "build" || kind === "broke") && (state === "ready" || state === "outWithPlayer"))
    .flatMap((order) => {
      const onTest = requestOf(reader, order).request.purpose === "test" || order.answer === "testing";
      const where: FinishedClub["where"] | null =
        order.state === "ready"
          ? { kind: "ready", order: order.number, truck: trucks.get(order.truckId) ?? "" }
          : onTest
            ? { kind: "out", order: order.number }
            : null;
      const built = where === null ? [] : sheetsOf(reader, order).filter((sheet) => sheet.club === club);
      return built.flatMap((sheet) => {
        const finished = clubOfSheet(reader, sheet);
        return finished === null || where === null ? [] : [{ club: finished, where, onTest }];
      });
    });
}

/**
 * Lists every finished club a player has for one place in the bag besides the gamer: backups of the live spec, clubs
 * of orders that are ready, clubs out on test.
 */
export function finishedClubs(reader: Reader, playerId: Id<"player">, club: ClubName): readonly FinishedClub[] {
  const backups = (liveSpec(reader, playerId)?.bag.backups ?? []).filter((known) => known.club === club);
  return [...backups.map((known) => ({ club: known, where: lying(reader, playerId, known), onTest: false })), ...ofOrders(reader, playerId, club)];
}
