import type { Instant } from "../../core/kinds.ts";
import type { Sender } from "../chat/types.ts";
import type { InHand } from "./inHand.ts";
import { makeSettler } from "./makeSettler.ts";

export interface Poster {
  readonly post: () => Promise<void>;
  /** Once more, without coming again. */
  readonly last: () => Promise<void>;
}

interface PosterParts {
  /** Tells when to come again, null when nothing waits. */
  readonly post: (sender: Sender) => Promise<Instant | null>;
  readonly now: () => Instant;
}

const SOONEST_MS = 250;
const LATEST_MS = 20_000;

/** Sends what waits, and comes again when the next post is due. */
export function makePoster({ post, now }: PosterParts, sender: Sender, inHand: InHand): Poster {
  let timer: NodeJS.Timeout | undefined;
  let isLast = false;
  const once = makeSettler(async () => {
    clearTimeout(timer);
    const waitingUntil = await post(sender);
    if (waitingUntil !== null && !isLast) {
      const afterMs = Math.min(Math.max(waitingUntil - now(), SOONEST_MS), LATEST_MS);
      timer = setTimeout(() => void inHand.run("the outbox", once), afterMs).unref();
    }
  });
  return {
    post: once,
    last: async () => {
      isLast = true;
      await once();
      clearTimeout(timer);
    },
  };
}
