import type { Instant } from "../../core/kinds.ts";
import type { Button, Reply } from "../chat/types.ts";
import type { Answered, HandedOver } from "../operations/handOver.ts";
import type { ListEntry } from "../operations/listForPlay.ts";
import { card, line, note, reply } from "./card.ts";
import { timeText } from "./shown.ts";
import { stateWords } from "./stateWords.ts";

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
    case "handed-over": {
      const waits = done.sets ? playable : null;
      return note(
        "handover",
        `${number} out with ${takenBy === "player" ? "player" : `player, taken by ${takenBy ?? ""}`}`,
        waits === null ? "good" : "attention",
        waits ?? "It may take full swings now.",
      );
    }
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
