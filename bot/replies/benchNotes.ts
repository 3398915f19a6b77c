import type { Reply } from "../chat/types.ts";
import type { Measured } from "../operations/measureOrder.ts";
import type { Press, Pressed } from "../operations/pressStep.ts";
import { note } from "./card.ts";
import { sheetName } from "./shown.ts";
import { stateWords } from "./stateWords.ts";

const pressWords: Readonly<Record<Press, string>> = { start: "started", glueOn: "glue on", done: "to the final check" };

export function pressedNote(press: Press, pressed: Pressed): Reply {
  const { number, state, heldReason } = pressed.order;
  if (pressed.kind === "pressed") {
    return note(
      "step",
      `${number} ${pressWords[press]}`,
      "plain",
      ...(press === "done" && state === "finalCheck" ? ["Its sheet says what to measure and to look at."] : []),
    );
  }
  const why = {
    held: `it is held: ${heldReason ?? ""}`,
    "wrong-state": `it is ${stateWords[state]}`,
    "no-glue": "nothing on it is glued",
    already: "that was pressed before",
  }[pressed.why];
  return note("refusal", `${number}: ${why}`, "refusal", "Nothing was changed.");
}

export function measuredNote(measured: Measured): Reply {
  const { number, state, heldReason } = measured.order;
  if (measured.kind === "refused") {
    return note(
      "refusal",
      measured.why === "held" ? `${number} is held: ${heldReason ?? ""}` : `${number} is ${stateWords[state]}: measuring belongs to the build`,
      "refusal",
      "Nothing was kept.",
    );
  }
  if (measured.kind === "which-club") {
    const [first] = measured.clubs;
    const name = first === undefined ? "" : sheetName(first);
    return note(
      "ask",
      `${number}: of which club?`,
      "attention",
      `It has ${measured.clubs.map(sheetName).join(", ")}. Write for instance: measured ${number} ${name} loft … lie …. Nothing was kept.`,
    );
  }
  const words = {
    ready: ["is as written: ready to hand over", "good"],
    "no-plan": ["is measured: ready to hand over", "good"],
    off: ["is off what was written: rework it, or the rep has the player accept it (/order accept)", "attention"],
    unmeasured: ["is not measured in full yet", "attention"],
  } as const;
  const [text, tone] = words[measured.verdict];
  return note("measured", `${number} ${text}`, tone);
}
