import type { Card } from "../chat/types.ts";
import { lineText } from "./lineText.ts";

/** All that a card says, as plain text: for a chat that has no room for it. */
export function wholeCardText({ title, lines, fields, choices, buttons }: Card): string {
  const labels = buttons.map(({ label }) => `[${label}]`).join(" ");
  return [
    title,
    "",
    ...lines.map(lineText),
    ...section(fields.map(({ label, value }) => `${label}: ${lineText(value)}`)),
    ...(choices === null ? [] : section([choices.label, ...choices.items.map(({ label }) => `- ${label}`)])),
    ...section(labels === "" ? [] : [labels]),
    "",
  ].join("\n");
}

const section = (lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ["", ...lines]);
