import type { Card, Line } from "../../chat/types.ts";
import type { Counted, HeadCounted, PartCounted } from "../../operations/countStock.ts";
import { card, line } from "../card.ts";
import { plural } from "../shown.ts";

const MOST_LINES = 25;

/** `+2`, `−2` with a true minus. */
const difference = (value: number): string => (value > 0 ? `+${value}` : `−${-value}`);

const partLine = ({ name, place, onRecordCount, countedCount }: PartCounted): Line =>
  line(`${name}: ${onRecordCount} on record, ${countedCount} counted: `, { strong: difference(countedCount - onRecordCount) }, ` (${place})`);

function headLine({ serial, model, from, to }: HeadCounted): Line {
  if (to === null) return line({ strong: `${serial} ${model} not found` }, ` in ${from ?? "its drawer"}: it has no place now`);
  return line(`${serial} ${model} found in ${to}: ${from === null ? "it had no place on record" : `moved here from ${from}`}`);
}

/** What a count changed: each difference, heads that moved or are gone, orders planned anew. */
export function countedCard({ parts, drawers, heads, replanned }: Counted): Card {
  const changed = parts.filter(({ onRecordCount, countedCount }) => onRecordCount !== countedCount);
  const counted = [
    ...(parts.length > 0 ? [plural(parts.length, "part")] : []),
    ...(drawers.length > 0 ? [plural(drawers.length, "drawer")] : []),
  ].join(" and ");
  const lines = [
    ...changed.map(partLine),
    ...drawers
      .filter(({ onRecordCount, countedCount }) => onRecordCount !== countedCount)
      .map(({ place, onRecordCount, countedCount }) =>
        line(`${place}: ${onRecordCount} on record, ${countedCount} found: `, { strong: difference(countedCount - onRecordCount) }),
      ),
    ...heads.map(headLine),
  ];
  const more = lines.length - MOST_LINES;
  const isSame = lines.length === 0;
  return card({
    kind: "stock.counted",
    title: isSame ? `Counted ${counted}: as on record, nothing changed` : `Counted ${counted}: ${plural(changed.length + heads.length, "change")}`,
    tone: replanned.length > 0 || heads.some(({ to }) => to === null) ? "attention" : "good",
    lines: [
      ...lines.slice(0, MOST_LINES),
      ...(more > 0 ? [line(`and ${more} more`)] : []),
      ...replanned.map(({ order, gone }) => line(`Order ${order.number} held ${gone.join(", ")}: it is a draft again, and its rep is told`)),
    ],
    data: {
      changedCount: changed.length + heads.length,
      parts: changed.slice(0, MOST_LINES).map(({ name, place, onRecordCount, countedCount }) => ({ name, place, onRecordCount, countedCount })),
      heads: heads.slice(0, MOST_LINES).map(({ serial, model, from, to }) => ({ serial, model, from, to })),
      replanned: replanned.map(({ order }) => ({ orderNumber: order.number })),
    },
  });
}
