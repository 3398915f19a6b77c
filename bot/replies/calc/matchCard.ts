import type { compareClubs } from "../../../core/bag/compareClubs.ts";
import type { Instant } from "../../../core/kinds.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Json, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { ago, plural } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { comparedWords } from "./comparedWords.ts";
import { directedInputs, sides } from "./directedInputs.ts";

type Comparison = ReturnType<typeof compareClubs>;
type Row = Comparison["rows"][number];
type NamedPart = Comparison["differing"][number];

/** One of the two clubs, as people call it, and when the gauge last had it. */
export interface ComparedClub {
  readonly shown: string;
  readonly hand: "left" | "right";
  /** What was not measured stands as the sheet planned it. */
  readonly isPlanned: boolean;
  readonly measuredAt: Instant | null;
  readonly gauge: string | null;
}

export interface MatchFacts {
  readonly inputs: readonly Understood[];
  readonly unit: "in" | "mm";
  readonly now: Instant;
  /** Null for typed pairs. */
  readonly clubs: readonly [ComparedClub, ComparedClub] | null;
  readonly comparison: Comparison;
  /** Parts that differ, as each club has them. */
  readonly parts: readonly { readonly part: NamedPart; readonly values: readonly [string, string] }[];
}

const partWords: Readonly<Record<NamedPart, string>> = {
  headModel: "head",
  stampedLoftDeg: "stamped",
  grind: "grind",
  sleeveModel: "sleeve",
  sleeveMark: "sleeve set",
  shaftModel: "shaft",
  tipTrimMm: "tip",
  logo: "logo",
  gripModel: "grip",
  rib: "rib",
  stamp: "stamp",
};
const overallWords: Readonly<Record<Comparison["overall"], string>> = {
  same: "the same to the gauge",
  close: "close, within tolerance",
  off: "off",
  unmeasured: "nothing measured on both",
};

function verdictWords({ quantity, verdict, delta }: Row, unit: MatchFacts["unit"]): string {
  const { amount, more, less } = comparedWords[quantity];
  return verdict === "off" ? `off ${amount(Math.abs(delta), unit)} ${delta > 0 ? more : less}` : verdict;
}

function rowLine(row: Row, unit: MatchFacts["unit"]): Line {
  const { name, value, amount } = comparedWords[row.quantity];
  const held = row.tolerance === 0 ? "" : `; within ${amount(row.tolerance, unit)}, gauge ${amount(row.gaugeError, unit)}`;
  const said = verdictWords(row, unit);
  return line(`${name} ${value(row.wanted, unit)} > ${value(row.got, unit)} `, row.verdict === "off" ? { strong: said } : said, held);
}

function measuredWords({ shown, isPlanned, measuredAt, gauge }: ComparedClub, now: Instant): string {
  if (measuredAt === null) return `${shown}: never measured${isPlanned ? ", as planned" : ""}`;
  return `${shown}: measured ${ago(measuredAt, now)} on ${gauge ?? "an unnamed gauge"}${isPlanned ? ", the rest as planned" : ""}`;
}

function clubLines({ clubs, now }: MatchFacts): readonly Line[] {
  if (clubs === null) return [];
  const [one, other] = clubs;
  const areApart = one.measuredAt !== null && other.measuredAt !== null && (one.gauge === null || one.gauge !== other.gauge);
  return [
    line(measuredWords(one, now)),
    line(measuredWords(other, now)),
    ...(areApart ? [line({ strong: "Not on one gauge: angles compare on one gauge only" })] : []),
    ...(one.hand === other.hand ? [] : [line({ strong: "One is left-handed, the other right-handed" })]),
  ];
}

const partLines = ({ parts }: MatchFacts): readonly Line[] =>
  parts.map(({ part, values: [one, other] }) => line(`${partWords[part]} ${one} > ${other} `, { strong: "differs" }));

const nameOf = (name: string): string =>
  name in comparedWords ? comparedWords[name as Row["quantity"]].name.toLowerCase() : name in partWords ? partWords[name as NamedPart] : name;

const nameFields = (label: string, names: readonly string[]) => (names.length === 0 ? [] : [{ label, value: line(names.map(nameOf).join(", ")) }]);

const dataOf = ({ rows, differing, unknown, incomparable, overall }: Comparison): { readonly [key: string]: Json } => ({
  overall,
  rows: rows.map((row) => ({ ...row })),
  differing,
  unknown,
  incomparable,
});

/** `Bram Oxtoby driver and backup`. */
function titleWords({ clubs, comparison: { overall }, parts }: MatchFacts, off: number): string {
  const [one, other] = clubs ?? [];
  const behind = one !== undefined && other?.shown.startsWith(`${one.shown} `) === true ? other.shown.slice(one.shown.length + 1) : other?.shown;
  return `${one === undefined ? "Two clubs" : `${one.shown} and ${behind}`}: ${overall === "off" ? `${plural(off + parts.length, "thing")} off` : overallWords[overall]}`;
}

/** Two clubs held against each other, row by row: same, close, or off by how much. */
export function matchReply(facts: MatchFacts): Reply {
  const { clubs, comparison, unit } = facts;
  const { rows, overall } = comparison;
  const off = rows.filter(({ verdict }) => verdict === "off").length;
  return reply(
    calcCard({
      view: "match",
      title: titleWords(facts, off),
      tone: overall === "off" ? "attention" : "plain",
      inputs: directedInputs(facts.inputs, { face: sides.face }),
      lines: [...rows.map((row) => rowLine(row, unit)), ...partLines(facts), ...clubLines(facts)],
      fields: [...nameFields("On one side only", comparison.unknown), ...nameFields("Measured differently", comparison.incomparable)],
      leavesOut: "feel, looks, and whether a club may be played. Same is what two readings on one gauge cannot tell apart.",
      data: {
        ...dataOf(comparison),
        measuredAt: clubs?.[0].measuredAt ?? null,
        otherMeasuredAt: clubs?.[1].measuredAt ?? null,
      },
    }),
  );
}
