import type { OrderFacts } from "../operations/orderFacts.ts";

export const stateWords: Readonly<Record<OrderFacts["state"], string>> = {
  draft: "draft",
  confirmed: "confirmed",
  building: "building",
  finalCheck: "final check",
  ready: "ready",
  outWithPlayer: "out with player",
  closed: "closed",
  withdrawn: "withdrawn",
};
