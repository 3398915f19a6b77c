import type { Instant } from "../../core/kinds.ts";
import type { Card, Line } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { orderTitle } from "./orderTitle.ts";
import { firstName, plural, timeText } from "./shown.ts";
import { stateWords } from "./stateWords.ts";
import { waitWords } from "./waitWords.ts";

const restWords = { paused: "paused", handedBack: "handed back" } as const;

/** What an order is doing: held, awaited, paused, setting; else its state. */
function doing(facts: OrderFacts, now: Instant): string {
  const { heldReason, expectedAt, zone, atBench, state } = facts;
  const expected = expectedAt === null ? "" : `expected ${timeText(expectedAt, now, zone)}`;
  if (heldReason !== null) {
    return `held: ${heldReason}${expected === "" ? "" : `, ${expected}`}`;
  }
  if (facts.awaitsClub && state === "confirmed") {
    const club = facts.clubs.length > 1 ? "clubs" : "club";
    return expected === "" ? `waits for the ${club}` : `${club} ${expected}`;
  }
  const wait = waitWords(facts, now);
  const lies = atBench.lies === null ? "" : `, lies: ${atBench.lies}`;
  const words = [...(atBench.resting === null ? [] : [`${restWords[atBench.resting]}${lies}`]), ...(wait === null ? [] : [wait])];
  return words.length === 0 ? stateWords[state] : words.join(", ");
}

function row(facts: OrderFacts, now: Instant): Line {
  const { hands } = facts.atBench;
  const by = hands === null || facts.heldReason !== null ? "" : ` (${firstName(hands.name)})`;
  const promise = facts.promiseAt === null || facts.state === "ready" ? "" : `, promise ${timeText(facts.promiseAt, now, facts.zone)}`;
  return line(`${orderTitle(facts)} ${doing(facts, now)}${by}${promise}`);
}

/** One pinned board a truck, a line an order. */
export function boardCard(orders: readonly OrderFacts[], now: Instant): Card {
  return card({
    kind: "board",
    title: orders.length === 0 ? "Bench: nothing to do" : `Bench: ${plural(orders.length, "order")}`,
    lines: orders.map((facts) => row(facts, now)),
    data: { orderCount: orders.length },
  });
}
