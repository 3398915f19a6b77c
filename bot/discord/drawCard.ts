import type { APIEmbed, MessageMentionOptions } from "discord.js";
import type { Card, Line } from "../chat/types.ts";
import { type Called, type CalledOf, drawLines, mention } from "./drawLine.ts";
import { type CardRow, drawRows } from "./drawRows.ts";
import { cutText, escapeText, plainLine } from "./escapeText.ts";

const TITLE_MAX = 256;
const LINES_MAX = 4096;
const FIELD_COUNT_MAX = 25;
const FIELD_LABEL_MAX = 256;
const FIELD_VALUE_MAX = 1024;
const FOOTER_MAX = 100;
const EMBED_MAX = 6000;
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
 * Draws a card within the platform's limits. Only people and roles that the card calls are woken.
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
  const title = cutMarkup(card.title, TITLE_MAX);
  const footerText = cutText(plainLine(footer), FOOTER_MAX);
  const room = EMBED_MAX - title.length - footerText.length;
  const description = drawLines(card.lines, calledOf, Math.min(LINES_MAX, room));
  return {
    title,
    color: colours[card.tone],
    ...(description.trim() === "" ? {} : { description }),
    fields: drawFields(card, calledOf, room - description.length),
    ...(footerText === "" ? {} : { footer: { text: footerText } }),
  };
}

function drawFields(card: Card, calledOf: CalledOf, maxLength: number): { name: string; value: string }[] {
  const fields: { name: string; value: string }[] = [];
  let room = maxLength;
  for (const { label, value } of card.fields.slice(0, FIELD_COUNT_MAX)) {
    const field = { name: cutMarkup(label, FIELD_LABEL_MAX) || "·", value: drawLines([value], calledOf, FIELD_VALUE_MAX).trim() || "·" };
    room -= field.name.length + field.value.length;
    if (room < 0) {
      return fields;
    }
    fields.push(field);
  }
  return fields;
}

function cutMarkup(text: string, maxLength: number): string {
  const whole = escapeText(text).trim();
  return whole.length <= maxLength ? whole : drawLines([[text]], () => null, maxLength).replace("\n…", "…");
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
