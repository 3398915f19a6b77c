import type { Card } from "../chat/types.ts";
import { card, line } from "./card.ts";

interface MovedHead {
  readonly number: number;
  readonly serials: readonly string[];
  readonly forNumber: number;
}

/** A confirmed order that takes another head before its first step, so that both orders are served best. */
export const movedHeadCard = ({ number, serials, forNumber }: MovedHead): Card =>
  card({
    kind: "order.headMoved",
    title: `${number} takes head ${serials.join(", ")} now`,
    lines: [line(`Its head goes to ${forNumber}. The new one is no further from what was written; nothing else changes`)],
    data: { orderNumber: number, forOrderNumber: forNumber },
  });
