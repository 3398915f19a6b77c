import type { Instant } from "../../core/kinds.ts";
import { type ReestimateParts, reestimate } from "../flows/reestimate.ts";
import { type TickParts, tick } from "./tick.ts";

/** All that is due at a moment: what the clock owes, then new times for benches that changed. */
export async function dueNow(parts: TickParts & Pick<ReestimateParts, "effort">, now: () => Instant): Promise<void> {
  tick(parts, now());
  await reestimate({ ...parts, now });
}
