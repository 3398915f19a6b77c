import type { Id } from "../../core/kinds.ts";
import type { Card, Reply } from "../chat/types.ts";

/** For an answer that its asker could not be shown: what it was about, for everybody's eyes no more than that. */
export function lateAnswerCard(person: { readonly id: Id<"person">; readonly name: string } | null, reply: Reply): Card {
  const about = reply.kind === "card" ? reply.card.title : reply.form.title;
  return {
    kind: "lateAnswer",
    title: about,
    tone: "attention",
    lines: [
      [
        ...(person === null ? [] : [{ call: person.id, name: person.name }, ": "]),
        "the chat would not take the answer in time, so it is posted here. Ask again to see it whole; what was done is done once.",
      ],
    ],
    fields: [],
    buttons: [],
    choices: null,
    files: [],
    data: {},
  };
}
