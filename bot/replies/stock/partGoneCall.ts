import type { Card } from "../../chat/types.ts";
import type { OrderFacts } from "../../operations/orderFacts.ts";
import { card, line } from "../card.ts";
import { orderTitle } from "../orderTitle.ts";

/** A call to the rep: a count did not find what the order held, and it waits for another Go. */
export function partGoneCall(facts: OrderFacts, gone: readonly string[]): Card {
  const action = { subject: `order:${facts.order}`, version: facts.version };
  const canBeBuilt = facts.faults.length === 0;
  return card({
    kind: "call.gone",
    title: `${orderTitle(facts)} is a draft again`,
    tone: "attention",
    lines: [
      line({ call: facts.postedBy.id, name: facts.postedBy.name }, ` the count did not find ${gone.join(", ")}`),
      line(
        canBeBuilt
          ? "It is planned anew from what is here. Look at it and press Go."
          : "It cannot be built from what is here: its post says what is short.",
      ),
    ],
    buttons: [
      ...(canBeBuilt ? [{ label: "Go", weight: "main" as const, action: { command: "order confirm", ...action } }] : []),
      { label: "Drop", weight: "plain", action: { command: "order drop", ...action } },
    ],
    data: { orderNumber: facts.number, gone },
  });
}
