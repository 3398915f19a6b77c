import type { Id, Instant } from "../../core/kinds.ts";
import type { Card, Line, Reply } from "../chat/types.ts";
import { card, line } from "./card.ts";

export interface Asker {
  readonly id: Id<"person">;
  readonly name: string;
}

const called = (asker: Asker | null): Line => (asker === null ? [] : [{ call: asker.id, name: asker.name }, ": "]);

/** For an answer that its asker could not be shown: what it was about, for everybody's eyes no more than that. */
export const lateAnswerCard = (asker: Asker | null, reply: Reply): Card =>
  card({
    kind: "lateAnswer",
    title: reply.kind === "card" ? reply.card.title : reply.form.title,
    tone: "attention",
    lines: [
      line(
        ...called(asker),
        "the chat would not take the answer in time, so it is posted here. Ask again to see it whole; what was done is done once.",
      ),
    ],
  });

/** For what somebody asked for and the bot ended before it got to it. */
export const cutShortCard = (asker: Asker | null, command: string, at: Instant): Card =>
  card({
    kind: "cutShort",
    title: `Not done: ${command}`,
    tone: "attention",
    lines: [
      line(
        ...called(asker),
        "asked for at ",
        { at, zone: "UTC" },
        ", and the bot was restarted before it got to it. Nothing was changed: please ask again.",
      ),
    ],
  });

/** For what somebody asks for while the bot is being stopped. */
export const leavingCard: Card = card({
  kind: "leaving",
  title: "Not done: I am being restarted",
  tone: "attention",
  lines: [line("Nothing was changed. Please ask again in a minute.")],
});
