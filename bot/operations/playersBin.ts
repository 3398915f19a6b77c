import type { Id } from "../../core/kinds.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { playerById } from "../../db/repositories/people.ts";
import { addPlace, binOf } from "../../db/repositories/places.ts";
import type { Tx } from "../../db/write.ts";

/** The player's own bin in the truck that works for the player; one is made where there is none yet. */
export function playersBin(tx: Tx, { truckId, playerId }: Pick<OrderRow, "truckId" | "playerId">): Id<"place"> {
  const known = binOf(tx, truckId, playerId);
  return known?.id ?? addPlace(tx, { kind: "playerBin", label: `bin ${playerById(tx, playerId)?.name ?? playerId}`, truckId, playerId });
}
