import type { Reply } from "../chat/types.ts";
import type { Reworked } from "../operations/reworkStep.ts";
import { note } from "./card.ts";
import { clubWords } from "./shown.ts";
import { stateWords } from "./stateWords.ts";
import { stepWords } from "./stepWords.ts";

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export const unknownStepNote = (written: string, names: readonly string[]): Reply =>
  note("refusal", `${written} is no step`, "refusal", `One of: ${names.join(", ")}. Nothing was changed.`);

/** What became of a step that was to be done again or left out. */
export function reworkedNote(what: "again" | "skip", done: Reworked): Reply {
  const { number, state } = done.order;
  switch (done.kind) {
    case "reworked": {
      const steps = done.steps.map((kind) => lower(stepWords[kind])).join(", ");
      return what === "again"
        ? note(
            "step",
            `${number} ${clubWords(done.club)}: again ${steps}`,
            "attention",
            "What follows waits for it. If it takes a new part, hold the order and have it planned anew.",
          )
        : note("step", `${number} ${clubWords(done.club)}: left out ${steps}`, "plain");
    }
    case "which-club":
      return note("ask", `${number}: of which club?`, "attention", `Add club: ${done.clubs.map(clubWords).join(", ")}. Nothing was changed.`);
    case "refused": {
      const why = {
        "wrong-state": `it is ${stateWords[state]}`,
        "no-such-step": "it has no such step open",
        "not-done": "that step is still to be done",
        "must-be-done": "measuring, signing and what has to set are never left out",
      }[done.why];
      return note("refusal", `${number}: ${why}`, "refusal", "Nothing was changed.");
    }
  }
}
