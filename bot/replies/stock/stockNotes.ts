import type { Unread } from "../../boundary/stock/findQuestion.ts";
import type { Reply } from "../../chat/types.ts";
import { card, line, note, reply } from "../card.ts";
import { findExamples, unreadLines } from "./unreadLines.ts";

/** Stock is a truck's: where there is none nothing can be put or counted. */
export const noTruckNote = (): Reply => note("refusal", "This channel has no truck", "attention", "Ask in a truck's channel.");

export const longQuestionNote = (mostCharacters: number): Reply =>
  note("stock.heads", `A question has at most ${mostCharacters} characters`, "attention", "Ask for one kind of head or part at a time.");

/** Nothing of a question says what is looked for. */
export const nothingAskedReply = (unread: readonly Unread[]): Reply =>
  reply(
    card({
      kind: "stock.heads",
      title: "What is looked for?",
      tone: "attention",
      lines: [...unreadLines(unread), ...findExamples.map((example) => line(`/stock find ${example}`))],
    }),
  );
