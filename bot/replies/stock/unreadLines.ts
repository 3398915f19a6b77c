import type { Unread } from "../../boundary/stock/findQuestion.ts";
import type { Line } from "../../chat/types.ts";
import { line } from "../card.ts";
import { short } from "./stockFaultsReply.ts";

/** What a search takes, by example. */
export const findExamples = ["under 9 true, left hand", "8.5 to 9 true driver right", "scree 7i over 34", "wedge 56 heel-relieved", "dunlin 60 x"];

/** What was not read of a question, with what would have been. */
export function unreadLines(unread: readonly Unread[]): readonly Line[] {
  if (unread.length === 0) return [];
  const words = unread.map(({ written, guess }) => `${short(written)}${guess === null ? "" : ` (meant ${guess}?)`}`);
  return [
    line(
      { strong: `Not read: ${words.join(", ")}` },
      ". I take models, clubs, left or right, a grind, and under, over or 8.5 to 9 of true, lie, face, bounce, g.",
    ),
  ];
}
