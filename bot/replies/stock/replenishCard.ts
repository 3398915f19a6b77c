import type { Card, Line, Reply } from "../../chat/types.ts";
import type { OwedBin, OwedPart, Refilled } from "../../operations/refillBin.ts";
import { card, line, note } from "../card.ts";
import { plural } from "../shown.ts";

const MOST_CHOICES = 25;

const partWords = ({ quantity, name, orderNumbers }: OwedPart): string => {
  const orders = orderNumbers.length === 0 ? "" : ` (${orderNumbers.length === 1 ? "order" : "orders"} ${orderNumbers.join(", ")})`;
  return `${quantity} × ${name}${orders}`;
};

const binLine = ({ place, parts }: OwedBin): Line => line({ strong: place }, `: ${parts.map(partWords).join(", ")}`);

/** What the bins are owed, each refilled by a press of whoever may. */
export function replenishCard(bins: readonly OwedBin[], truckId: number, mayRefill: boolean): Card {
  const shown = bins.slice(0, MOST_CHOICES);
  const partCount = bins.flatMap(({ parts }) => parts).reduce((total, { quantity }) => total + quantity, 0);
  return card({
    kind: "stock.replenish",
    title: bins.length === 0 ? "No bin is owed anything" : `${plural(bins.length, "bin")} to refill: ${plural(partCount, "part")}`,
    tone: bins.length === 0 ? "good" : "attention",
    lines: [...shown.map(binLine), ...(bins.length > shown.length ? [line(`and ${plural(bins.length - shown.length, "bin")} more`)] : [])],
    choices:
      bins.length === 0 || !mayRefill
        ? null
        : {
            label: "Refilled",
            action: { command: "stock", subject: `replenish:${truckId}`, version: 0 },
            items: shown.map(({ place, placeId, lastId }) => ({ label: place, value: `${placeId}:${lastId}` })),
          },
    data: {
      binCount: bins.length,
      partCount,
      bins: shown.map(({ place, parts }) => ({
        place,
        parts: parts.map(({ name, quantity, orderNumbers }) => ({ name, quantityCount: quantity, orderNumbers })),
      })),
    },
  });
}

/** What went into a bin, and what is to be ordered. */
export function refilledNote({ place, moved, short }: Refilled): Reply {
  const words = (rows: readonly { readonly quantity: number; readonly name: string }[]): string =>
    rows.map(({ quantity, name }) => `${quantity} × ${name}`).join(", ");
  return note(
    "stock.refilled",
    moved.length === 0 ? `${place}: the main rack has none of it` : `${place} refilled from the main rack: ${words(moved)}`,
    short.length === 0 ? "good" : "attention",
    ...short.map(({ quantity, name, atHomeBase }) => `Order from home base: ${quantity} × ${name} (${atHomeBase} there)`),
  );
}

export const refilledBeforeNote = (): Reply =>
  note("stock.refilled", "That was refilled before", "attention", "Nothing was changed. /stock replenish shows what is still owed.");
