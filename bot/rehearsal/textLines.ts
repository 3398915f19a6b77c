import type { Instant } from "../../core/kinds.ts";
import type { Card, Form, Line, Span } from "../chat/types.ts";
import { clockText } from "./clockText.ts";
import type { KeptFile } from "./keepFiles.ts";
import { plainText } from "./plainText.ts";
import type { ScreenPost } from "./screenPost.ts";
import { wrap } from "./wrap.ts";

const COLUMNS = 72;

interface Place {
  readonly zone: string;
  readonly now: Instant;
}

/** A post as lines of a terminal, 72 columns wide, its moments in the zone of the channel. */
export function textLines(post: ScreenPost, zone: string): readonly string[] {
  const place = { zone, now: post.at };
  const content = "card" in post ? post.card : post.form;
  const marks = [
    "card" in post ? (post.card.tone === "plain" ? "" : post.card.tone) : "form",
    post.edits === null ? "" : "edited",
    post.to === null ? "" : "only you",
  ].filter((mark) => mark !== "");
  const head = [`[#${post.channel} ${clockText(post.at, zone, post.at)}]`, content.title, ...marks.map((mark) => `(${mark})`)].join(" ");
  const body = "card" in post ? cardLines(post.card, post.answers === null ? post.id : null, place) : formLines(post.form);
  const files = "card" in post ? post.files : [];
  return [...[head, ...body].flatMap((line) => wrap(plainText(line), COLUMNS, "    ")), ...files.map(fileLine)];
}

/** In one piece, however long: a path is there to be copied. */
const fileLine = ({ name, bytes, path }: KeptFile): string =>
  `  file ${plainText(`${name} (${Math.max(1, Math.round(bytes / 1000))} kB) at ${path}`)}`;

/** The id stands beside buttons, so that `press 1 on …` can name the post later. */
function cardLines(card: Card, id: string | null, place: Place): readonly string[] {
  const buttons = card.buttons.map(({ label }, index) => `[${index + 1}] ${label}`).join(" ");
  return [
    ...card.lines.map((line) => `  ${lineText(line, place)}`),
    ...card.fields.map(({ label, value }) => `  ${label}: ${lineText(value, place)}`),
    ...(card.choices === null ? [] : [`  ${card.choices.label}`, ...numbered(card.choices.items, "  ")]),
    ...(buttons === "" ? [] : [`  ${buttons}${id === null ? "" : ` · ${id}`}`]),
  ];
}

function formLines(form: Form): readonly string[] {
  return form.parts.flatMap(({ label, required, value, items }, index) => [
    `  ${index + 1} ${label}${required ? "" : " (may stay empty)"}: ${value}`,
    ...numbered(items, "      "),
  ]);
}

function numbered(items: readonly { readonly label: string }[], indent: string): readonly string[] {
  return items.map(({ label }, index) => `${indent}${index + 1}. ${label}`);
}

function lineText(line: Line, place: Place): string {
  return line.map((span) => spanText(span, place)).join("");
}

function spanText(span: Span, { zone, now }: Place): string {
  if (typeof span === "string") return span;
  if ("strong" in span) return span.strong;
  if ("call" in span) return `@${span.name}`;
  const here = clockText(span.at, zone, now);
  return span.zone === zone ? here : `${here} (${clockText(span.at, span.zone, now)} ${span.zone})`;
}
