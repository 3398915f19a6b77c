import type { Reply } from "../chat/types.ts";
import type { Answered, HandedOver } from "../operations/handOver.ts";
import type { Measured } from "../operations/measureOrder.ts";
import type { Move, Moved } from "../operations/moveOrder.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import type { Press, Pressed } from "../operations/pressStep.ts";
import { note } from "./card.ts";
import { stateWords } from "./orderCard.ts";

/** A button of an older card: nothing changes. */
export const staleNote = (number: number, state: OrderFacts["state"]): Reply =>
  note(
    "stale",
    `${number} has moved on: ${stateWords[state]}`,
    "attention",
    "That button was of an older card. Nothing was changed; the order's post shows how it stands.",
  );

const doneForGoodWords: Readonly<Record<string, string>> = {
  tipPrepare: "tip trimmed",
  bond: "glued",
  cut: "cut",
  soleWork: "sole ground",
  stampText: "stamped",
};
const forGood = (kinds: readonly string[]): readonly string[] =>
  kinds.length === 0 ? [] : [`Not to be undone: ${kinds.map((kind) => doneForGoodWords[kind] ?? kind).join(", ")}.`];

const moveWords: Readonly<Record<Move, string>> = { hold: "held", resume: "goes on", scratch: "withdrawn", drop: "dropped" };

export function movedNote(move: Move, moved: Moved): Reply {
  const { number, state } = moved.order;
  switch (moved.kind) {
    case "moved":
      return note("order.moved", `${number} ${moveWords[move]}`, "plain", ...forGood(moved.cannotBeUndone));
    case "nothing-to-do":
      return note("order.moved", `${number} ${move === "hold" ? "is held already" : "is not held"}`, "attention", "Nothing was changed.");
    case "refused":
      return note(
        "refusal",
        `${number} is ${stateWords[state]}: ${move} makes no sense there`,
        "refusal",
        `It can be done while ${moved.wanted.map((wanted) => stateWords[wanted]).join(", ")}.`,
      );
  }
}

const pressWords: Readonly<Record<Press, string>> = { start: "started", glueOn: "glue on", done: "to the final check" };

export function pressedNote(press: Press, pressed: Pressed): Reply {
  const { number, state, heldReason } = pressed.order;
  if (pressed.kind === "pressed") {
    return note(
      "step",
      `${number} ${pressWords[press]}`,
      "plain",
      ...(press === "done" ? [`Now type: measured ${number} loft … face … swing … length …`] : []),
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
  const words = {
    ready: ["is as written: ready to hand over", "good"],
    "no-plan": ["is measured: ready to hand over", "good"],
    off: ["is off what was written: rework it, or the rep has the player accept it (/order accept)", "attention"],
    unmeasured: ["is not measured in full yet", "attention"],
  } as const;
  const [text, tone] = words[measured.verdict];
  return note("measured", `${number} ${text}`, tone);
}

export function handedOverNote(done: HandedOver, playable: string | null): Reply {
  const { number, state, takenBy } = done.order;
  return done.kind === "refused"
    ? note("refusal", `${number} is ${stateWords[state]}: only a ready club is handed over`, "refusal", "Nothing was changed.")
    : note(
        "handover",
        `${number} out with ${takenBy === "player" ? "player" : `player, taken by ${takenBy ?? ""}`}`,
        playable === null ? "good" : "attention",
        playable ?? "It may take full swings now.",
      );
}

export function answeredNote(answered: Answered): Reply {
  const { number, state, answer } = answered.order;
  switch (answered.kind) {
    case "refused":
      return note(
        "refusal",
        `${number} is ${stateWords[state]}: only a club out with the player can be in the bag`,
        "refusal",
        "Nothing was changed.",
      );
    case "published":
      return note("bag", `${number} ${answer ?? ""}: live spec version ${answered.version}`, "good");
    case "noted":
      return note("bag", `${number} ${answer ?? ""}: noted, the live spec stays as it was`, "plain");
  }
}

/** A change of what is cut or glued already: the choice is the rep's. */
export const irreversibleNote = (number: number, done: readonly string[]): Reply =>
  note(
    "refusal",
    `${number} is being built: its values stay`,
    "refusal",
    ...forGood(done),
    `Scratch ${number} and send a new order, or let it finish and order a turn, swap or regrip.`,
  );

export const revisedNote = (number: number): Reply => note("order.revised", `${number} revised`, "plain");

/** A club off what was written, taken as it is by the player. */
export const acceptedNote = (number: number): Reply => note("order.accepted", `${number} accepted as measured: ready to hand over`, "good");

export const notAcceptableNote = (number: number, why: "nothing-off" | "not-measured" | "lead-only"): Reply => {
  const words = {
    "nothing-off": "nothing on it is off: there is nothing to accept",
    "not-measured": "it is not measured in full yet",
    "lead-only": "conformity is accepted by the lead only",
  };
  return note("refusal", `${number}: ${words[why]}`, "refusal", "Nothing was changed.");
};
