import type { Instant } from "../../core/kinds.ts";
import type { Card, Line } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { orderTitle } from "./orderTitle.ts";
import { plural, timeText } from "./shown.ts";
import { stateWords } from "./stateWords.ts";

const MS_PER_MIN = 60_000;

/** What an order is doing, with the end of a wait that runs. */
function doing(facts: OrderFacts, now: Instant): string {
  if (facts.heldReason !== null) {
    return `held: ${facts.heldReason}`;
  }
  const running = facts.clubs.flatMap((club) => club.steps).find((step) => step.state === "running" && step.route.unattended);
  if (running?.startedAt != null) {
    const until = (running.startedAt + Math.max(running.route.floorMin, running.route.medianMin) * MS_PER_MIN) as Instant;
    const what = running.kind === "bondSet" ? "glue" : "grip";
    return until <= now ? `${what} set` : `${what} till ${timeText(until, now, facts.zone)}`;
  }
  return stateWords[facts.state];
}

function row(facts: OrderFacts, now: Instant): Line {
  const promise = facts.promiseAt === null || facts.state === "ready" ? "" : `, promise ${timeText(facts.promiseAt, now, facts.zone)}`;
  return line(`${orderTitle(facts)} ${doing(facts, now)}${promise}`);
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
