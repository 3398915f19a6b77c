import type { Card } from "../chat/types.ts";
import type { OwedMarking } from "../operations/owedFacts.ts";
import { card, line } from "./card.ts";
import { clubWords, plural } from "./shown.ts";

const MOST_CHOICES = 25;

/** What is still to be stamped, done by a press. */
export function owedCard(owed: readonly OwedMarking[]): Card {
  return card({
    kind: "owed",
    title: owed.length === 0 ? "No markings owed" : `${plural(owed.length, "marking")} owed`,
    tone: owed.length === 0 ? "good" : "attention",
    lines: owed.map((row) => line(`${row.player} ${clubWords(row.club)}: ${row.text}${row.forWin ? " (win mark)" : ""}`)),
    choices:
      owed.length === 0
        ? null
        : {
            label: "Stamped",
            action: { command: "stamped", subject: "marking:0", version: 0 },
            items: owed.slice(0, MOST_CHOICES).map((row) => ({ label: `${row.player} ${clubWords(row.club)} ${row.text}`, value: String(row.id) })),
          },
    data: { owedCount: owed.length },
  });
}
