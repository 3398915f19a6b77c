import type { Card } from "../chat/types.ts";
import { card, line } from "./card.ts";

/** A post that could not be placed, for the lead. */
export const deadPostCard = (dead: { readonly channel: string; readonly ref: string; readonly reason: string }): Card =>
  card({
    kind: "dead-post",
    title: `A post for ${dead.channel} could not be placed`,
    tone: "attention",
    lines: [line(`${dead.reason} (${dead.ref})`), line("Check that channel and my permissions there.")],
  });
