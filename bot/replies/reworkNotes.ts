import type { StepKind } from "../../core/bench/benchTypes.ts";
import type { Reply } from "../chat/types.ts";
import type { Reworked } from "../operations/reworkStep.ts";
import { note } from "./card.ts";
import { clubWords } from "./shown.ts";
import { stateWords } from "./stateWords.ts";
import { stepSaid } from "./stepWords.ts";

export const unknownStepNote = (written: string, names: readonly string[]): Reply =>
  note("refusal", `${written} is no step`, "refusal", `One of: ${names.join(", ")}. Nothing was changed.`);

/** Steps that use a part up: another of it is not held for the order. */
const uses: Readonly<Partial<Record<StepKind, string>>> = { tipPrepare: "shaft", cut: "shaft", grip: "grip", turnFerrule: "ferrule" };

function newPart(number: number, steps: readonly StepKind[]): readonly string[] {
  const [part] = steps.flatMap((kind) => uses[kind] ?? []);
  return part === undefined
    ? []
    : [
        `What was used is used: no second ${part} is kept for it. Take one and count what is left (/stock count), or hold ${number} till it is there.`,
      ];
}

/** What became of a step that was to be done again or left out. */
export function reworkedNote(what: "again" | "skip", done: Reworked): Reply {
  const { number, state } = done.order;
  switch (done.kind) {
    case "reworked": {
      const steps = done.steps.map((kind) => stepSaid(kind)).join(", ");
      return what === "again"
        ? note("step", `${number} ${clubWords(done.club)}: again ${steps}`, "attention", "What follows waits for it.", ...newPart(number, done.steps))
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
