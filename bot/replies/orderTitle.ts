import type { OrderFacts } from "../operations/orderFacts.ts";
import { clubsWords } from "./shown.ts";

/** `57 OXTOBY RH driver`: what every card about an order begins with. */
export function orderTitle(facts: OrderFacts): string {
  const family = facts.player.split(" ").at(-1) ?? facts.player;
  const kind = facts.kind === "build" ? "" : ` ${facts.kind}`;
  const clubs = clubsWords(facts.request.clubs);
  const count = facts.request.count > 1 ? ` ×${facts.request.count}` : "";
  return `${facts.number} ${family.toUpperCase()} ${facts.hand === "left" ? "LH" : "RH"}${kind} ${clubs}${count}`;
}
