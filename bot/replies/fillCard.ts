import type { Card, Line } from "../chat/types.ts";
import { allowance, type FillFacts, type FillRow } from "../operations/fillFacts.ts";
import { card, line } from "./card.ts";
import { plural } from "./shown.ts";

const MOST_CHOICES = 25;

/** A line a player: sizes and hand, and only what differs from the usual. */
function rowLine(row: FillRow): Line {
  const differs = [
    ...(row.balls === allowance.balls ? [] : [plural(row.balls, "ball")]),
    ...(row.hats === allowance.hats ? [] : [plural(row.hats, "hat")]),
    ...(row.gloves === allowance.gloves ? [] : [plural(row.gloves, "glove")]),
  ];
  const sizes = `hat ${row.hatSize}, glove ${row.gloveSize} ${row.hand === "right" ? "left" : "right"}`;
  return line(`${row.filled ? "✓ " : ""}${row.name}: ${sizes}`, ...(differs.length === 0 ? [] : [", ", { strong: differs.join(", ") }]));
}

/** The Monday post: everyone's bin, and the total against the float. */
export function fillCard(facts: FillFacts, event: string): Card {
  const open = facts.rows.filter((row) => !row.filled);
  const short = facts.totals.filter((total) => total.free < total.needed);
  return card({
    kind: "fill",
    title: `Monday fill, ${event}: ${open.length === 0 ? "all bins filled" : `${open.length} of ${facts.rows.length} to fill`}`,
    tone: short.length > 0 ? "attention" : "plain",
    lines: [
      line(`Each: ${allowance.balls} balls, ${allowance.hats} hats, ${allowance.gloves} gloves; only what differs is shown`),
      ...facts.rows.map(rowLine),
      line(`Needed of what lies here: ${facts.totals.map(({ name, needed, free }) => `${name} ${needed}/${free}`).join(", ")}`),
      ...short.map(({ name, needed, free }) => line({ strong: `Short of ${name}: ${needed - free}` })),
    ],
    choices:
      open.length === 0
        ? null
        : {
            label: "Filled",
            action: { command: "filled", subject: `event:${facts.event}`, version: 0 },
            items: open.slice(0, MOST_CHOICES).map((row) => ({ label: row.name, value: String(row.player) })),
          },
    data: {
      playerCount: facts.rows.length,
      openCount: open.length,
      shortCount: short.length,
      ballCount: open.reduce((sum, row) => sum + row.balls, 0),
    },
  });
}
