import type { Card } from "../../chat/types.ts";
import type { Received } from "../../operations/receiveStock.ts";
import { card, line } from "../card.ts";
import { plural, shown } from "../shown.ts";

const MOST_LINES = 25;

/** What was taken in, a line each. */
export function receivedCard({ parts, heads }: Received): Card {
  const count = parts.reduce((total, { quantity }) => total + quantity, 0);
  const what = [...(parts.length > 0 ? [plural(count, "part")] : []), ...(heads.length > 0 ? [plural(heads.length, "head")] : [])];
  const lines = [
    ...parts.map(({ name, quantity, place, refilled }) =>
      line(`${quantity} × ${name} to ${place}${refilled > 0 ? `, ${refilled} of it owed to the bin` : ""}`),
    ),
    ...heads.map(({ serial, model, hand, stampedLoftDeg, massG, place }) =>
      line(`Head ${serial} ${model}${hand === "left" ? " LH" : ""} stamped ${shown.stamp(stampedLoftDeg)}, ${shown.mass(massG)}, to ${place}`),
    ),
  ];
  const more = lines.length - MOST_LINES;
  return card({
    kind: "stock.received",
    title: `Received: ${what.join(" and ")}`,
    tone: "good",
    lines: [...lines.slice(0, MOST_LINES), ...(more > 0 ? [line(`and ${more} more`)] : [])],
    data: {
      partCount: count,
      headCount: heads.length,
      parts: parts
        .slice(0, MOST_LINES)
        .map(({ name, place, quantity, refilled }) => ({ name, place, quantityCount: quantity, refilledCount: refilled })),
      heads: heads.slice(0, MOST_LINES).map((head) => ({ ...head })),
    },
  });
}
