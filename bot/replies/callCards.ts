import type { Button, Card, Line } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { canGo } from "./orderButtons.ts";
import { orderTitle } from "./orderTitle.ts";

const called = (facts: OrderFacts, text: string): Line => line({ call: facts.postedBy.id, name: facts.postedBy.name }, ` ${text}`);

const button = (facts: OrderFacts, label: string, command: string, argument?: string): Button => ({
  label,
  weight: "plain",
  action: { command, subject: `order:${facts.order}`, version: facts.version, ...(argument === undefined ? {} : { argument }) },
});

/** What a draft left alone waits for. */
function nudgeWords(facts: OrderFacts): string {
  if (canGo(facts)) {
    return "nothing is held and nobody builds it before you press Go";
  }
  return facts.kind === "broke" && facts.faults.length === 0
    ? "there is no finished one here: press Build one, or drop it"
    : "it cannot be built as written: its post says why. Change it or drop it";
}

export const nudgeCard = (facts: OrderFacts): Card =>
  card({
    kind: "call.nudge",
    title: `${orderTitle(facts)} is still a draft`,
    tone: "attention",
    lines: [called(facts, nudgeWords(facts))],
    buttons: [
      ...(canGo(facts) ? [button(facts, "Go", "order confirm")] : []),
      ...(facts.kind === "broke" ? [button(facts, "Build one", "order build")] : []),
      button(facts, "Drop", "order drop"),
    ],
    data: { orderNumber: facts.number },
  });

export const readyCallCard = (facts: OrderFacts): Card =>
  card({
    kind: "call.ready",
    title: `${orderTitle(facts)} is ready`,
    tone: "good",
    lines: [called(facts, "it can be handed over")],
    data: { orderNumber: facts.number },
  });

export const askBagCard = (facts: OrderFacts): Card =>
  card({
    kind: "call.bag",
    title: `${orderTitle(facts)}: is it in the bag?`,
    tone: "attention",
    lines: [called(facts, "the live spec changes only when you say so")],
    buttons: ["in the bag", "backup", "testing", "coming back"].map((answer) => button(facts, answer, "order bag", answer)),
    data: { orderNumber: facts.number },
  });
