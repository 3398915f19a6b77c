import type { Accepted, CalcFault, Understood } from "../../boundary/calc/fields.ts";
import type { Line, Reply } from "../../chat/types.ts";
import { card, line, reply } from "../card.ts";
import { inputLines } from "./inputLines.ts";

const MOST_FAULTS = 8;
const LONGEST_WORD = 60;

/** More names would fill a phone. */
const MOST_NAMES = 12;

const plain = (value: number): string => String(Math.round(value * 1000) / 1000);
/** Ends of a range of inches: whole ones inside it where it is wide. */
const WIDE_IN = 10;
const end = (value: number, unit: string, whole: (value: number) => number): string =>
  plain(unit === "in" && Math.abs(value) >= WIDE_IN ? whole(value) : value);
const rangeWords = (min: number, max: number, unit: string): string =>
  `${end(min, unit, Math.ceil)} to ${end(max, unit, Math.floor)}${unit.startsWith("°") || unit === "" ? unit : ` ${unit}`}`;

/** A part as people write it. */
const partExamples: Readonly<Record<string, string>> = { head: "200 at 44.5", shaft: "60 at 21", grip: "50 at 4.25" };

const accepted: { readonly [K in Accepted["kind"]]: (of: Extract<Accepted, { kind: K }>) => string } = {
  range: ({ name, min, max, unit }) => `${name} ${rangeWords(min, max, unit)}`,
  units: ({ name, units }) => `${name} ${units.length === 0 ? "has no unit" : `in ${units.join(" or ")}`}`,
  words: ({ name, words }) => `${name}: ${words.join(", ")}`,
  names: ({ names }) => `known here: ${names.slice(0, MOST_NAMES).join(", ")}${names.length > MOST_NAMES ? " and more" : ""}`,
  part: ({ name }) => `${name} takes grams at inches from the cap, such as ${name} ${partExamples[name] ?? "4 at 40"}`,
  swing: ({ name }) => `${name} A0 to G10, such as ${name} d3`,
  once: ({ name }) => `${name} counts once`,
  value: ({ name }) => `${name} takes its value, not a change`,
  text: ({ name }) => `${name} takes words`,
  needed: ({ name }) => `Needed: ${name}`,
};

const say = <K extends Accepted["kind"]>(of: Extract<Accepted, { kind: K }>): string => (accepted[of.kind as K] as (of: Accepted) => string)(of);

function faultLine({ word, accepted: would, guess }: CalcFault): Line {
  const shown = word.length > LONGEST_WORD ? `${word.slice(0, LONGEST_WORD)}…` : word;
  return line(...(shown === "" ? [] : [{ strong: `${shown}? ` }]), `${say(would)}.${guess === null ? "" : ` Meant ${guess}?`}`);
}

/** Every fault with its word, what would be accepted and the nearest guess; what was read stands beside them. */
export function calcFaultsReply(view: string, faults: readonly CalcFault[], inputs: readonly Understood[], example: string): Reply {
  const more = faults.length - MOST_FAULTS;
  return reply(
    card({
      kind: "calc.faults",
      title: faults.length === 1 ? "One thing before this can be worked out" : `${faults.length} things before this can be worked out`,
      tone: "attention",
      lines: [...inputLines(inputs), ...faults.slice(0, MOST_FAULTS).map(faultLine), ...(more > 0 ? [line(`and ${more} more`)] : [])],
      fields: [{ label: "Such as", value: line(`/calc ${view} ${example}`) }],
      data: { faults: faults.map(({ word, guess }) => ({ word, guess })) },
    }),
  );
}
