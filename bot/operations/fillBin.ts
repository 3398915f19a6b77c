import type { Id, Instant } from "../../core/kinds.ts";
import type { PlayerRow } from "../../db/repositories/people.ts";
import { takeGoods } from "../../db/repositories/stock.ts";
import { addFill } from "../../db/repositories/week.ts";
import type { Tx } from "../../db/write.ts";
import { fillOf, goodsOf } from "./fillFacts.ts";

export type Filled =
  | {
      readonly kind: "filled";
      readonly balls: number;
      readonly hats: number;
      readonly gloves: number;
      readonly short: readonly { readonly name: string; readonly quantity: number }[];
    }
  | { readonly kind: "before" };

/** Records that a player's bin is filled, once an event, and takes its goods off the truck's float. */
export function fillBin(
  tx: Tx,
  player: PlayerRow,
  at: { readonly truck: Id<"truck">; readonly event: Id<"event">; readonly person: Id<"person">; readonly now: Instant },
): Filled {
  const row = fillOf(player);
  const { balls, hats, gloves } = row;
  if (!addFill(tx, { eventId: at.event, playerId: player.id, balls, hats, gloves, personId: at.person, at: at.now })) {
    return { kind: "before" };
  }
  const short = goodsOf(row).flatMap(({ name, quantity }) => {
    const taken = takeGoods(tx, { truckId: at.truck, name, quantity, reason: `bin of player ${player.id}`, personId: at.person, at: at.now });
    return taken < quantity ? [{ name, quantity: quantity - taken }] : [];
  });
  return { kind: "filled", balls, hats, gloves, short };
}
