import type { Instant } from "../../core/kinds.ts";
import type { Button, Reply } from "../chat/types.ts";
import type { Answered, HandedOver } from "../operations/handOver.ts";
import type { ListEntry } from "../operations/listForPlay.ts";
import type { Measured } from "../operations/measureOrder.ts";
import type { Move, Moved } from "../operations/moveOrder.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import type { Press, Pressed } from "../operations/pressStep.ts";
import { card, line, note, reply } from "./card.ts";
import { stateWords } from "./orderCard.ts";
import { sheetName, timeText } from "./shown.ts";

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

const asked = (number: number, model: string, looked: ListEntry["listedAt"]): string =>
  looked === null ? `${number}: is ${model} on the list for play?` : `${number}: is ${model} still on the list for play?`;

/** The entry of a head in the list for play is asked for before the club leaves the truck. */
function askListNote(order: HandedOver["order"], { model, listedAt }: ListEntry, taker: string): Reply {
  const act = (label: string, argument: string): Button => ({
    label,
    weight: "plain",
    action: { command: "order listed", subject: `order:${order.id}`, version: order.version, argument },
  });
  return reply(
    card({
      kind: "ask.list",
      title: asked(order.number, model, listedAt),
      tone: "attention",
      lines: [line("This event keeps a list. Look it up, then press; the date is kept. Only the governing bodies rule.")],
      buttons: [act(`On it: to ${taker}`, `yes:${taker}`), act("Not on it", "no")],
    }),
  );
}

export const notYetPlayable = (playableAt: Instant, now: Instant, zone: string): string =>
  `Not for full swings before ${timeText(playableAt, now, zone)}: glue and grip still set.`;

export function handedOverNote(done: HandedOver, taker: string, playable: string | null): Reply {
  const { number, state, takenBy } = done.order;
  switch (done.kind) {
    case "refused":
      return note("refusal", `${number} is ${stateWords[state]}: only a ready club is handed over`, "refusal", "Nothing was changed.");
    case "ask-list":
      return askListNote(done.order, done.entry, taker);
    case "not-listed":
      return note(
        "refusal",
        `${number}: ${done.entry.model} is not on the list for play`,
        "refusal",
        "For testing only. The lead may let it out with a reason (/order handover); only the governing bodies rule.",
      );
    case "handed-over":
      return note(
        "handover",
        `${number} out with ${takenBy === "player" ? "player" : `player, taken by ${takenBy ?? ""}`}`,
        playable === null ? "good" : "attention",
        playable ?? "It may take full swings now.",
      );
  }
}

export function listedNote(number: number, entries: readonly ListEntry[], listed: boolean): Reply {
  const names = entries.map(({ model }) => model).join(", ");
  return entries.length === 0
    ? note("refusal", `${number}: no list for play applies`, "refusal", "Nothing was changed.")
    : note(
        "list",
        `${names} ${listed ? "is on" : "is not on"} the list for play: noted`,
        listed ? "good" : "attention",
        listed ? "It can be handed over." : "For testing only.",
      );
}

export const arrivedNote = (order: { readonly number: number; readonly state: OrderFacts["state"] }, what: "arrived" | "not-awaited"): Reply =>
  what === "arrived"
    ? note("order.arrived", `${order.number}: the club is in the truck, its clock runs`, "good")
    : note("refusal", `${order.number} waits for no club`, "refusal", `It is ${stateWords[order.state]}. Nothing was changed.`);

export const broughtNote = (number: number, who: string): Reply =>
  note("order.brought", who === "inTruck" ? `${number}: the club is in the truck` : `${number}: ${who} brings the club`, "plain");

export const buildInsteadNote = (number: number): Reply =>
  note("order.rebuilt", `${number} is a new build now`, "plain", "Its post shows it; press Go there.");

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

/** The reason is the player's, in his words; it is kept. */
export const acceptForm = (order: { readonly id: number; readonly number: number; readonly version: number }): Reply => ({
  kind: "form",
  form: {
    title: `${order.number}: the player takes it as it is`,
    action: { command: "order accept", subject: `order:${order.id}`, version: order.version },
    parts: [{ name: "reason", label: "Why, in his words", items: [], required: true, value: "" }],
  },
});

export const notAcceptableNote = (number: number, why: "nothing-off" | "not-measured" | "lead-only"): Reply => {
  const words = {
    "nothing-off": "nothing on it is off: there is nothing to accept",
    "not-measured": "it is not measured in full yet",
    "lead-only": "conformity is accepted by the lead only",
  };
  return note("refusal", `${number}: ${words[why]}`, "refusal", "Nothing was changed.");
};
