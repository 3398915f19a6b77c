import type { Card, Line, Reply, Span } from "../../bot/chat/types.ts";
import { type Instant, instant } from "../../core/kinds.ts";
import { audit } from "../../db/schema/plumbing.ts";
import type { MemoryBot, MemoryPost } from "./memoryBot.ts";

const spanText = (span: Span): string => {
  if (typeof span === "string") return span;
  if ("strong" in span) return span.strong;
  return "call" in span ? `@${span.name}` : new Date(span.at).toISOString();
};

export const lineText = (line: Line): string => line.map(spanText).join("");

/** A card as a person reads it: title, lines, what stands behind More. */
export const cardText = (card: Card): string =>
  [card.title, ...card.lines.map(lineText), ...card.fields.map(({ label, value }) => `${label}: ${lineText(value)}`)].join("\n");

/** The card of a reply that must be one. */
export function cardOf(reply: Reply | null): Card {
  if (reply?.kind !== "card") {
    throw new Error(`not answered by a card: ${JSON.stringify(reply)}`);
  }
  return reply.card;
}

export const labels = (card: Card): readonly string[] => card.buttons.map(({ label }) => label);

/** The newest post of a channel whose card fits. */
export function newest(bot: MemoryBot, channel: string, fits: (card: Card) => boolean): MemoryPost {
  const found = bot.posts(channel).findLast(({ card }) => fits(card));
  if (found === undefined) {
    throw new Error(
      `no such post in ${channel}: ${bot
        .posts(channel)
        .map(({ card }) => `${card.kind} ${card.title}`)
        .join(" | ")}`,
    );
  }
  return found;
}

/** An order's own post, as it stands. */
export const orderPost = (bot: MemoryBot, number: number, channel = "plover-orders"): MemoryPost =>
  newest(
    bot,
    channel,
    ({ kind, data }) =>
      /^order\.(draft|confirmed|building|finalCheck|ready|outWithPlayer|closed|withdrawn)$/.test(kind) && data.orderNumber === number,
  );

export const sheetPost = (bot: MemoryBot, number: number): MemoryPost =>
  newest(bot, "plover-bench", ({ kind, data }) => kind === "sheet" && data.orderNumber === number);

/** A time as the clocks at the Saltpan Open show it: Lisbon, one hour ahead of UTC in May. */
export const venueTime = (local: string): Instant => instant(Date.parse(`${local}+01:00`));

/** What the record holds, oldest first: who did what to what. */
export const recorded = (bot: MemoryBot): readonly { readonly action: string; readonly subject: string; readonly personId: number | null }[] =>
  bot.db.select({ action: audit.action, subject: audit.subject, personId: audit.personId }).from(audit).orderBy(audit.seq).all();

/** The calls and questions of a kind that stand in the order channel, about one order. */
export const calls = (bot: MemoryBot, kind: string, number: number): readonly Card[] =>
  bot
    .posts("plover-orders")
    .map(({ card }) => card)
    .filter((card) => card.kind === kind && dataOf(card, number) !== undefined);

/** The numbers a card gives of an order: its own, or its part of a card about several. */
export function dataOf({ data }: Card, number: number): Card["data"] | undefined {
  const rows = Array.isArray(data.orders) ? (data.orders as readonly Card["data"][]) : [data];
  return rows.find((row) => row.orderNumber === number);
}
