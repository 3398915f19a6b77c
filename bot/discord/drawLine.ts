import type { Id } from "../../core/kinds.ts";
import type { Line, Role, Span } from "../chat/types.ts";
import { escapeText } from "./escapeText.ts";

/** Who is behind a call, as the platform names them. */
export type Called = { readonly kind: "person" | "role"; readonly id: string };
export type CalledOf = (called: Id<"person"> | Role) => Called | null;

/** A line in the platform's markup; a moment shows in each reader's own zone. */
export function drawLine(line: Line, calledOf: CalledOf): string {
  return line.map((span) => drawSpan(span, calledOf)).join("");
}

function drawSpan(span: Span, calledOf: CalledOf): string {
  if (typeof span === "string") {
    return escapeText(span);
  }
  if ("strong" in span) {
    const text = escapeText(span.strong).trim();
    return text === "" ? "" : `**${text}**`;
  }
  if ("at" in span) {
    return `<t:${Math.floor(span.at / 1000)}:t>`;
  }
  const called = calledOf(span.call);
  return called === null ? escapeText(span.name) : mention(called);
}

export const mention = ({ kind, id }: Called): string => (kind === "person" ? `<@${id}>` : `<@&${id}>`);

/** As many whole lines as fit, `…` for what is left out; only a first line too long by itself is cut. */
export function drawLines(lines: readonly Line[], calledOf: CalledOf, maxLength: number): string {
  const drawn = lines.map((line) => drawLine(line, calledOf));
  const whole = drawn.join("\n");
  if (whole.length <= maxLength) {
    return whole;
  }
  const room = maxLength - "\n…".length;
  const kept: string[] = [];
  let length = -1;
  for (const line of drawn) {
    length += line.length + 1;
    if (length > room) {
      break;
    }
    kept.push(line);
  }
  const shown = kept.length > 0 ? kept : [cutLine(lines[0] ?? [], calledOf, room)];
  return [...shown, "…"].join("\n");
}

/** The spans that fit, the first text that does not cut between two characters. */
function cutLine(line: Line, calledOf: CalledOf, maxLength: number): string {
  let text = "";
  for (const span of line) {
    const drawn = drawSpan(span, calledOf);
    if (text.length + drawn.length > maxLength) {
      return typeof span === "string" ? text + cutEscaped(drawn, maxLength - text.length) : text;
    }
    text += drawn;
  }
  return text;
}

/** Neither half a character nor the first half of an escape is left at the end. */
function cutEscaped(text: string, maxLength: number): string {
  const cut = text.slice(0, maxLength).replace(/[\ud800-\udbff]$/, "");
  const backslashes = cut.length - cut.replace(/\\+$/, "").length;
  return backslashes % 2 === 1 ? cut.slice(0, -1) : cut;
}
