import type { APIEmbed, MessageMentionOptions } from "discord.js";
import type { Card, Line } from "../chat/types.ts";
import { type Called, type CalledOf, drawLine, mention } from "./drawLine.ts";
import { type CardRow, drawRows } from "./drawRows.ts";
import { cutEscaped, cutText, escapeText, plainLine } from "./escapeText.ts";
import { fitCard, TITLE_MAX } from "./fitCard.ts";

const FOOTER_MAX = 100;
const CALLS_MAX = 10;

const colours: Readonly<Record<Card["tone"], number>> = { plain: 0x6b7280, good: 0x2f855a, attention: 0xb7791f, refusal: 0xb83232 };

/** A message of the platform, made afresh for every send. */
export interface DrawnCard {
  readonly content: string;
  readonly embeds: readonly [APIEmbed];
  readonly components: readonly CardRow[];
  readonly allowedMentions: MessageMentionOptions;
}

/**
 * Draws a card within the platform's limits: its fields in small print, with a last line of what had no room. Only people and roles that the card calls are woken.
 *
 * @param footer - the reference that people and the outbox read
 */
export function drawCard(card: Card, footer: string, calledOf: CalledOf): DrawnCard {
  const called = calledIn(card, calledOf);
  return {
    content: called.map(mention).join(" "),
    embeds: [drawEmbed(card, footer, calledOf)],
    components: drawRows(card),
    allowedMentions: {
      parse: [],
      users: called.flatMap(({ kind, id }) => (kind === "person" ? [id] : [])),
      roles: called.flatMap(({ kind, id }) => (kind === "role" ? [id] : [])),
    },
  };
}

function drawEmbed(card: Card, footer: string, calledOf: CalledOf): APIEmbed {
  const { lines, small, leftOut } = fitCard(card);
  const description = [
    ...lines.map((line) => drawLine(line, calledOf)),
    ...small.map((line) => `-# ${drawLine(line, calledOf)}`),
    ...(leftOut === null ? [] : [leftOut]),
  ].join("\n");
  const footerText = cutText(plainLine(footer), FOOTER_MAX);
  return {
    title: cutEscaped(escapeText(card.title).trim(), TITLE_MAX) || "·",
    color: colours[card.tone],
    ...(description.trim() === "" ? {} : { description }),
    ...(footerText === "" ? {} : { footer: { text: footerText } }),
  };
}

/** An embed wakes nobody, so whom a card calls stands above it, each once. */
function calledIn(card: Card, calledOf: CalledOf): readonly Called[] {
  const lines: readonly Line[] = [...card.lines, ...card.fields.map(({ value }) => value)];
  const called = new Map<string, Called>();
  for (const span of lines.flat()) {
    const found = typeof span !== "string" && "call" in span ? calledOf(span.call) : null;
    if (found !== null && called.size < CALLS_MAX) {
      called.set(mention(found), found);
    }
  }
  return [...called.values()];
}
