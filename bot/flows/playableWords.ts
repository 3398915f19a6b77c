import type { OrderRow } from "../../db/repositories/orders.ts";
import type { Context } from "../chat/context.ts";
import { notYetPlayable } from "../replies/handOverNotes.ts";

/** What a hand-over says of a club whose glue and grip still set; null when it may take full swings. */
export function playableWords({ playableAt }: OrderRow, { now, actor }: Context): string | null {
  return playableAt !== null && playableAt > now ? notYetPlayable(playableAt, now, actor.zone) : null;
}
