import { DomainError } from "../../core/errors.ts";
import { id } from "../../core/kinds.ts";
import { type OrderRow, orderById, orderByNumber } from "../../db/repositories/orders.ts";
import { currentEvent } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { readOrderRef } from "../boundary/readOrderRef.ts";
import type { Context } from "../chat/context.ts";

/**
 * Finds the order a person or a button names, in the channel's truck; a lead reaches those of every truck.
 *
 * @throws {DomainError} `order-unknown` when there is none
 */
export function findOrder(reader: Reader, context: Context, written: string): OrderRow {
  const ref = readOrderRef(written);
  const { truck } = context.actor;
  const order =
    ref === null
      ? null
      : ref.by === "id"
        ? orderById(reader, id<"order">(ref.id))
        : truck === null
          ? null
          : orderByNumber(reader, truck, currentEvent(reader, truck, context.now)?.event.id ?? null, ref.number);
  const isOthers = order !== null && order.truckId !== truck && !context.actor.roles.includes("lead");
  if (order === null || isOthers) {
    throw new DomainError("order-unknown", { written: written.replace(/^id:/, "") });
  }
  return order;
}
