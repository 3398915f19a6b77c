import type { Instant } from "../../core/kinds.ts";
import type { Mending } from "../boundary/reading.ts";
import type { Reply } from "../chat/types.ts";
import type { Deadline } from "../operations/draftOrder.ts";
import { card, line, note, reply } from "./card.ts";
import { mendingLines } from "./problemsCard.ts";
import { timeText } from "./shown.ts";

export const noTruckNote = (): Reply => note("refusal", "Orders go in a truck's order channel", "refusal", "Go there and send it again.");

/** Why a `by` cannot stand, and what would. */
export function deadlineNote(deadline: Exclude<Deadline, { kind: "none" } | { kind: "at" }>, now: Instant, zone: string): Reply {
  switch (deadline.kind) {
    case "past":
      return note("ask", `by ${timeText(deadline.at, now, zone)} has passed`, "attention", "Send it with a later time, or now. Nothing was ordered.");
    case "no-tee-time":
      return note(
        "ask",
        "No tee time is on record for this player",
        "attention",
        "Write by with a clock time, such as by 14:30. Nothing was ordered.",
      );
    case "after-roll-out":
      return note(
        "ask",
        `by ${timeText(deadline.at, now, zone)} is after the truck leaves (${timeText(deadline.rollOutAt, now, zone)})`,
        "attention",
        "Send it with an earlier time, or add: to courier. Nothing was ordered.",
      );
  }
}

/** The same order a moment ago: one press makes it a second one. */
export function sameOrderNote(number: number, post: number): Reply {
  return reply(
    card({
      kind: "ask",
      title: `Same as ${number}?`,
      tone: "attention",
      lines: [line(`${number} asks for the very same. Press only if another one is wanted.`)],
      buttons: [
        { label: "Another one", weight: "plain", action: { command: "order mend", subject: `post:${post}`, version: 0, argument: "anyway" } },
      ],
    }),
  );
}

/** A short answer beside the order's own post; a message needs none unless something was mended. */
export function draftNote(
  number: number,
  wish: { readonly mendings: readonly Mending[]; readonly go: boolean },
  confirmed: boolean,
  fromMessage: boolean,
): Reply | null {
  const waits =
    wish.go && !confirmed
      ? [line(wish.mendings.length > 0 ? "I had to mend a word, so it waits for one press of Go." : "It waits for one press of Go.")]
      : [];
  const lines = [...mendingLines(wish.mendings), ...waits];
  return fromMessage && lines.length === 0
    ? null
    : reply(card({ kind: "order.noted", title: `${number} ${confirmed ? "confirmed" : "is a draft"}`, lines }));
}
