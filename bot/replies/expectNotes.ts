import type { Instant } from "../../core/kinds.ts";
import type { Reply } from "../chat/types.ts";
import { note } from "./card.ts";
import { timeText } from "./shown.ts";

export const expectNotes = {
  expected: (number: number, at: Instant | null, now: Instant, zone: string): Reply =>
    at === null
      ? note("order.expect", `${number}: nobody says when it comes`, "plain")
      : note(
          "order.expect",
          `${number}: expected ${timeText(at, now, zone)}`,
          "plain",
          "The bench counts on it from then; the promise is given when it is there.",
        ),
  notAwaited: (number: number): Reply => note("refusal", `${number} waits for nothing`, "refusal", "Nothing was changed."),
};
