import type { Audience, Card, Line, Reply } from "../chat/types.ts";

/** A card with what is not said left empty. */
export function card(parts: Pick<Card, "kind" | "title"> & Partial<Card>): Card {
  return { tone: "plain", lines: [], fields: [], buttons: [], choices: null, files: [], data: {}, ...parts };
}

export const line = (...spans: Line): Line => spans;

export const reply = (shown: Card, audience: Audience = "asker"): Reply => ({ kind: "card", audience, card: shown });

/** A short answer of one line. */
export const note = (kind: string, title: string, tone: Card["tone"], ...lines: readonly string[]): Reply =>
  reply(card({ kind, title, tone, lines: lines.map((text) => line(text)) }));
