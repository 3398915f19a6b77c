import type { Instant } from "../../core/kinds.ts";
import type { Context } from "../chat/context.ts";
import type { Reply } from "../chat/types.ts";
import { type Move, moveOrder } from "../operations/moveOrder.ts";
import { movedNote } from "../replies/orderNotes.ts";
import { changeOrderFlow } from "./changeOrderFlow.ts";

/** Holds, resumes, scratches or drops an order. */
export function moveFlow(
  context: Context,
  move: Move,
  input: { readonly order: string; readonly version: number | null; readonly reason: string | null; readonly till?: Instant | null },
): Reply | null {
  return changeOrderFlow(context, input.order, input.version, `order.${move}`, (tx, order) => {
    const moved = moveOrder(tx, order, move, { reason: input.reason, till: input.till ?? null, now: context.now });
    return { order: moved.order, changed: moved.kind === "moved", reply: movedNote(move, moved) };
  });
}
