import type { Reply } from "../chat/types.ts";
import type { Move, Moved } from "../operations/moveOrder.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { note } from "./card.ts";
import { stateWords } from "./stateWords.ts";

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
/** What cannot be undone, where there is anything. */
export const forGood = (kinds: readonly string[]): readonly string[] =>
  kinds.length === 0 ? [] : [`Not to be undone: ${kinds.map((kind) => doneForGoodWords[kind] ?? kind).join(", ")}.`];

const countBack = (pulled: readonly string[]): readonly string[] =>
  pulled.length === 0 ? [] : [`Pulled from stock: ${pulled.join(", ")}. Count what is whole back in (/stock count).`];

/** What was held while somebody was at it rests. */
const takeUp = (move: Move, state: OrderFacts["state"]): readonly string[] =>
  move === "resume" && (state === "building" || state === "finalCheck") ? ["It is paused at the bench: Resume on its sheet takes it up."] : [];

const moveWords: Readonly<Record<Move, string>> = { hold: "held", resume: "goes on", scratch: "withdrawn", drop: "dropped" };

export function movedNote(move: Move, moved: Moved): Reply {
  const { number, state } = moved.order;
  switch (moved.kind) {
    case "moved":
      return note(
        "order.moved",
        `${number} ${moveWords[move]}`,
        "plain",
        ...forGood(moved.cannotBeUndone),
        ...countBack(moved.pulled),
        ...takeUp(move, moved.order.state),
      );
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

export const arrivedNote = (order: { readonly number: number; readonly state: OrderFacts["state"] }, what: "arrived" | "not-awaited"): Reply =>
  what === "arrived"
    ? note("order.arrived", `${order.number}: the club is in the truck, its clock runs`, "good")
    : note("refusal", `${order.number} waits for no club`, "refusal", `It is ${stateWords[order.state]}. Nothing was changed.`);

export const broughtNote = (number: number, who: string): Reply =>
  note("order.brought", who === "inTruck" ? `${number}: the club is in the truck` : `${number}: ${who} brings the club`, "plain");

export const buildInsteadNote = (number: number): Reply =>
  note("order.rebuilt", `${number} is a new build now`, "plain", "Its post shows it; press Go there.");

/** A change of what is cut or glued already: the choice is the rep's. */
export const irreversibleNote = (number: number, done: readonly string[]): Reply =>
  note(
    "refusal",
    `${number} is being built: its values stay`,
    "refusal",
    ...forGood(done),
    `Scratch ${number} and send a new order, or let it finish and order a turn, swap or regrip.`,
  );

/** A change that cannot be built: a confirmed order is not given up for it. */
export const staysNote = (number: number, why: readonly string[]): Reply =>
  note("refusal", `${number} stays as it was confirmed`, "refusal", ...why, "Nothing was changed.");

export const revisedNote = (number: number): Reply => note("order.revised", `${number} revised`, "plain");
