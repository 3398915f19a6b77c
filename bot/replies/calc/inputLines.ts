import type { Understood } from "../../boundary/calc/fields.ts";
import type { Line } from "../../chat/types.ts";
import { line } from "../card.ts";

function valueWords({ written, unit }: Understood["values"][number]): string {
  if (unit === "") return written;
  if (unit === "points" && /^[+-]?1$/.test(written)) return `${written} point`;
  return unit.startsWith("°") ? `${written}${unit}` : `${written} ${unit}`;
}

const inputWords = ({ name, values, between }: Understood): string => {
  const [first] = values;
  if (first !== undefined && first.unit === name) return valueWords(first);
  const joined = values.map(valueWords).join(between === "at" ? " at " : ", ");
  return between === "at" && values.length === 1 ? `${name} at ${joined}` : `${name} ${joined}`.trim();
};

/** The inputs as understood, what nobody wrote on a line of its own. */
export function inputLines(inputs: readonly Understood[]): readonly Line[] {
  const lineOf = (label: string, some: readonly Understood[]): readonly Line[] =>
    some.length === 0 ? [] : [line({ strong: `${label} ` }, some.map(inputWords).join("; "))];
  return [
    ...lineOf(
      "Read",
      inputs.filter(({ assumed }) => !assumed),
    ),
    ...lineOf(
      "Assumed",
      inputs.filter(({ assumed }) => assumed),
    ),
  ];
}
