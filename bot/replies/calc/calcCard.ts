import type { Understood } from "../../boundary/calc/fields.ts";
import type { Card } from "../../chat/types.ts";
import { card, line } from "../card.ts";
import { inputLines } from "./inputLines.ts";

interface CalcAnswer extends Pick<Card, "title" | "lines" | "data"> {
  readonly view: string;
  readonly inputs: readonly Understood[];
  readonly fields?: Card["fields"];
  readonly tone?: Card["tone"];
  /** What the model leaves out: the last line behind More. */
  readonly leavesOut: string;
}

/** A calculation: the inputs as understood first, then what comes of them, what the model leaves out last. */
export function calcCard({ view, title, inputs, lines, fields = [], tone = "plain", leavesOut, data }: CalcAnswer): Card {
  return card({
    kind: `calc.${view}`,
    title,
    tone,
    lines: [...inputLines(inputs), ...lines],
    fields: [...fields, { label: "Left out", value: line(leavesOut) }],
    data,
  });
}
