import type { Id } from "../../core/kinds.ts";
import type { Line, Role, Span } from "../chat/types.ts";
import { escapeText } from "./escapeText.ts";

/** Who is behind a call, as the platform names them. */
export type Called = { readonly kind: "person" | "role"; readonly id: string };
export type CalledOf = (called: Id<"person"> | Role) => Called | null;

const MENTION_MAX = "<@&18446744073709551615>".length;

/** A line in the platform's markup; a moment shows in each reader's own zone. */
export function drawLine(line: Line, calledOf: CalledOf): string {
  return joined(line)
    .map((span) => drawSpan(span, calledOf))
    .join("");
}

/** The most that a line takes, whoever is behind its calls. */
export function roomOfLine(line: Line): number {
  return joined(line).reduce((sum, span) => {
    const length = drawSpan(span, () => null).length;
    return sum + (typeof span !== "string" && "call" in span ? Math.max(length, MENTION_MAX) : length);
  }, 0);
}

export const mention = ({ kind, id }: Called): string => (kind === "person" ? `<@${id}>` : `<@&${id}>`);

/** Neighbours of one style as one: no markup is made where they meet. */
function joined(line: Line): Line {
  const spans: Span[] = [];
  for (const span of line) {
    const last = spans.at(-1);
    if (typeof span === "string" && typeof last === "string") {
      spans[spans.length - 1] = last + span;
    } else if (isStrong(span) && isStrong(last)) {
      spans[spans.length - 1] = { strong: last.strong + span.strong };
    } else if (span !== "") {
      spans.push(span);
    }
  }
  return spans;
}

const isStrong = (span: Span | undefined): span is { readonly strong: string } => typeof span === "object" && "strong" in span;

function drawSpan(span: Span, calledOf: CalledOf): string {
  if (typeof span === "string") {
    return escapeText(span);
  }
  if ("strong" in span) {
    return drawStrong(escapeText(span.strong));
  }
  if ("at" in span) {
    return `<t:${Math.floor(span.at / 1000)}:t>`;
  }
  const called = calledOf(span.call);
  return called === null ? escapeText(span.name) : mention(called);
}

/** Blanks at its ends stand outside: the platform makes no bold text that begins or ends with one. */
function drawStrong(text: string): string {
  const word = text.trim();
  const start = text.indexOf(word);
  return word === "" ? text : `${text.slice(0, start)}**${word}**${text.slice(start + word.length)}`;
}
