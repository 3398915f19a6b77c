import { instant } from "../../core/kinds.ts";
import type { Card, Json, Span } from "../chat/types.ts";

/** The moments a card may hold among its numbers, as it names them. */
const moments = { likelyAt: "in hand", promiseAt: "promise", playableAt: "full swings", byAt: "wanted by" } as const;
const open: ReadonlySet<unknown> = new Set(["draft", "confirmed", "building", "finalCheck"]);
/** Cards of times alone, which say no state. */
const ofTimes: ReadonlySet<string> = new Set(["ready", "call.late"]);
/** Moments are shown by the reader's own clock; the zone matters only where they are not. */
const zone = "UTC";

type Numbers = { readonly [name: string]: Json };

/** A card of open orders with their times once more, as each reader's own clock shows them: above they are the venue's. */
export function withOwnClock(card: Card): Card {
  if (!open.has(card.data.state) && !ofTimes.has(card.kind)) {
    return card;
  }
  const spans = ordersOf(card.data).flatMap(({ of, numbers }) =>
    Object.entries(moments).flatMap(([name, words]): readonly Span[][] => {
      const at = numbers[name];
      return typeof at === "number" ? [[`${of}${words} `, { at: instant(at), zone }]] : [];
    }),
  );
  const value = spans.flatMap((pair, index) => (index === 0 ? pair : [", ", ...pair]));
  return value.length === 0 ? card : { ...card, fields: [...card.fields, { label: "Your clock", value }] };
}

/** The one order of a card, or each of several with its number before its times. */
function ordersOf(data: Numbers): readonly { readonly of: string; readonly numbers: Numbers }[] {
  const { orders } = data;
  if (!Array.isArray(orders)) {
    return [{ of: "", numbers: data }];
  }
  return orders.filter(isNumbers).map((numbers) => ({ of: `${String(numbers.orderNumber)} `, numbers }));
}

const isNumbers = (value: Json): value is Numbers => typeof value === "object" && value !== null && !Array.isArray(value);
