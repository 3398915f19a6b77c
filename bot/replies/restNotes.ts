import type { Reply } from "../chat/types.ts";
import type { Rest, Rested } from "../operations/restStep.ts";
import { note } from "./card.ts";
import { stateWords } from "./stateWords.ts";

const restWords: Readonly<Record<Rest, string>> = { pause: "paused", resume: "goes on", handBack: "handed back" };

const moreWords: Readonly<Record<Rest, readonly string[]>> = {
  pause: ["Glue and grips set on by themselves. Resume takes it up again."],
  resume: [],
  handBack: ["Whoever is free takes it up with Resume. Say where it lies: note on its post, or in the bench channel."],
};

/** What became of Pause, Resume and Hand back. */
export function restedNote(rest: Rest, rested: Rested): Reply {
  const { number, state, heldReason } = rested.order;
  if (rested.kind === "rested") {
    return note("step", `${number} ${restWords[rest]}`, "plain", ...moreWords[rest]);
  }
  const why = {
    held: `it is held: ${heldReason ?? ""}`,
    "wrong-state": `it is ${stateWords[state]}`,
    resting: "it is paused already",
    "not-resting": "it is not paused",
  }[rested.why];
  return note("refusal", `${number}: ${why}`, "refusal", "Nothing was changed.");
}
