import { TZDate } from "@date-fns/tz";
import { format } from "date-fns";
import type { Line, Span } from "../chat/types.ts";

/** A line of a card as plain text, each moment in the zone it names. */
export function lineText(line: Line): string {
  return line.map(spanText).join("");
}

function spanText(span: Span): string {
  if (typeof span === "string") return span;
  if ("strong" in span) return span.strong;
  if ("call" in span) return `@${span.name}`;
  return `${format(new TZDate(span.at, span.zone), "EEE d MMM HH:mm")} (${span.zone})`;
}
