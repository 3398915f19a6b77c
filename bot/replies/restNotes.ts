import type { Reply } from "../chat/types.ts";
import type { Rest, Rested } from "../operations/restStep.ts";
import { note } from "./card.ts";
import { forGood } from "./orderNotes.ts";
import { stateWords } from "./stateWords.ts";

const restWords: Readonly<Record<Rest, string>> = { pause: "paused", resume: "goes on", handBack: "handed back" };

const moreWords: Readonly<Record<Rest, readonly string[]>> = {
  pause: ["Glue and grips set on by themselves. Resume takes it up again."],
  resume: [],
  handBack: ["Whoever is free takes it up with Resume."],
};

const liesWords = (rest: Rest, lies: string | null): readonly string[] =>
  lies !== null ? [`It lies: ${lies}`] : rest === "handBack" ? ["Say where it lies: /step back with lies, such as: rack 2"] : [];

/** What became of Pause, Resume and Hand back. */
export function restedNote(rest: Rest, rested: Rested, lies: string | null): Reply {
  const { number, state, heldReason } = rested.order;
  if (rested.kind === "rested") {
    const done = rest === "handBack" ? forGood(rested.cannotBeUndone) : [];
    return note("step", `${number} ${restWords[rest]}`, "plain", ...done, ...liesWords(rest, lies), ...moreWords[rest]);
  }
  const why = {
    held: `it is held: ${heldReason ?? ""}`,
    "wrong-state": `it is ${stateWords[state]}`,
    resting: "it is paused already",
    "handed-back": "it is handed back already",
    "not-resting": "it is not paused",
  }[rested.why];
  return note("refusal", `${number}: ${why}`, "refusal", "Nothing was changed.");
}
