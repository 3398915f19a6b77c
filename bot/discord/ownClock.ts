import { instant } from "../../core/kinds.ts";
import type { Card, Span } from "../chat/types.ts";

/** The moments a card may hold among its numbers, as it names them. */
const moments = { likelyAt: "in hand", promiseAt: "promise", playableAt: "full swings", byAt: "wanted by" } as const;
const open: ReadonlySet<unknown> = new Set(["draft", "confirmed", "building", "finalCheck"]);
/** Moments are shown by the reader's own clock; the zone matters only where they are not. */
const zone = "UTC";

/** An open order's card with its times once more, as each reader's own clock shows them: above they are the venue's. */
export function withOwnClock(card: Card): Card {
  const { data } = card;
  const spans = Object.entries(moments).flatMap(([name, words]): readonly Span[][] => {
    const at = data[name];
    return typeof at === "number" ? [[`${words} `, { at: instant(at), zone }]] : [];
  });
  if (!open.has(data.state) || spans.length === 0) {
    return card;
  }
  const value = spans.flatMap((pair, index) => (index === 0 ? pair : [", ", ...pair]));
  return { ...card, fields: [...card.fields, { label: "Your clock", value }] };
}
