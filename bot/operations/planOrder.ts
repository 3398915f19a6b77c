import type { Reader } from "../../db/write.ts";
import { planBroken } from "./planBroken.ts";
import type { OrderToPlan, PlannedClub } from "./plannedClub.ts";
import { planParts } from "./planParts.ts";
import { planWork } from "./planWork.ts";

/**
 * Plans every club of a request from the parts in reach now, heads together with every other open order.
 *
 * @param reader - database or transaction; nothing is changed
 * @param asked - what is asked for, at which truck, at which moment
 */
export function planOrder(reader: Reader, asked: OrderToPlan): readonly PlannedClub[] {
  switch (asked.request.kind) {
    case "build":
    case "swap":
    case "reshaft":
      return planParts(reader, { ...asked, kind: asked.request.kind });
    case "broke":
      return planBroken(reader, asked);
    default:
      return planWork(reader, { ...asked, kind: asked.request.kind });
  }
}
