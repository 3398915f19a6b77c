import { defaultGapLimits, type loftGaps } from "../../../core/bag/loftGaps.ts";
import type { progressions } from "../../../core/bag/progressions.ts";
import type { Instant } from "../../../core/kinds.ts";
import { assumed, type Understood } from "../../boundary/calc/fields.ts";
import type { Card, Json, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { ago, clubWords, plural, shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { matchData, matchWords, type SetMatch, setValue } from "./setMatch.ts";

type Gap = ReturnType<typeof loftGaps>["gaps"][number];
type Steps = ReturnType<typeof progressions>;

interface Lofted {
  readonly label: string;
  readonly loftDeg: number;
}

export interface GapRow extends Pick<Gap, "gapDeg" | "limits" | "flag"> {
  readonly stronger: Lofted;
  readonly weaker: Lofted;
}

/** What else the record says of the irons as a set. */
export interface SetFacts {
  readonly unit: "in" | "mm";
  readonly steps: Steps;
  readonly swingWeight: SetMatch | null;
  readonly inertia: SetMatch | null;
  readonly isInertiaMeasured: boolean;
}

export interface GapsFacts {
  /** Whose bag it is; null for typed lofts. */
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly rows: readonly GapRow[];
  /** Clubs without a measured loft. */
  readonly missing: readonly string[];
  readonly measured: { readonly gauges: readonly string[]; readonly oldestAt: Instant; readonly now: Instant } | null;
  readonly set: SetFacts | null;
}

const flagWords: Readonly<Record<NonNullable<Gap["flag"]>, string>> = { equal: "the same to the gauge", narrow: "narrow", wide: "wide" };
const { wedges, others } = defaultGapLimits;
const goodGaps = assumed("good gaps", `${others.minDeg} to ${others.maxDeg}°, between wedges ${wedges.minDeg} to ${wedges.maxDeg}°`, "");

const loftWords = ({ label, loftDeg }: Lofted): string => (label.endsWith("°") ? label : `${clubWords(label)} ${shown.angle(loftDeg)}`);

function gapLine({ stronger, weaker, gapDeg, flag }: GapRow): Line {
  const text = `${loftWords(stronger)} > ${loftWords(weaker)}: ${shown.angle(gapDeg)}`;
  return flag === null ? line(text) : line({ strong: `${text} ${flagWords[flag]}` });
}

function recordLines({ missing, measured }: GapsFacts): readonly Line[] {
  const unmeasured = missing.length === 0 ? [] : [line(`Not measured: ${missing.map(clubWords).join(", ")}; the gap there is not one gap`)];
  if (measured === null) return unmeasured;
  const { gauges, oldestAt, now } = measured;
  const on = gauges.length > 1 ? `on ${gauges.length} gauges (${gauges.join(", ")}): lofts compare on one` : `on ${gauges.join("")}`;
  return [...unmeasured, ...(gauges.length === 0 ? [] : [line(`Oldest measured ${ago(oldestAt, now)}, ${on}`)])];
}

const stepFlag = (flag: "small" | "large" | null): string => (flag === null ? "" : ` (${flag})`);

function setFields(set: SetFacts): Card["fields"] {
  const { steps, missingLength, missingLie } = set.steps;
  const pair = ({ longer, shorter }: (typeof steps)[number]): string => `${clubWords(longer)}-${clubWords(shorter)}`;
  const lengths = steps.map((step) => `${pair(step)} ${shown.length(step.lengthStepMm, set.unit)}${stepFlag(step.lengthFlag)}`);
  const lies = steps.flatMap((step) =>
    step.lieStepDeg === null
      ? []
      : [`${pair(step)} ${shown.angle(Math.abs(step.lieStepDeg))}${step.lieStepDeg < 0 ? " flatter" : ""}${stepFlag(step.lieFlag)}`],
  );
  const without = (what: string, clubs: readonly string[]) => (clubs.length === 0 ? [] : [`no ${what}: ${clubs.map(clubWords).join(", ")}`]);
  const inches = set.unit === "in" ? ", in" : "";
  return [
    { label: `Irons, each so much shorter${inches} (1/2 in is even)`, value: line([...lengths, ...without("length", missingLength)].join(", ")) },
    { label: "Irons, each so much more upright (0.5° is even)", value: line([...lies, ...without("lie", missingLie)].join(", ")) },
    ...[set.swingWeight, set.inertia].flatMap((match) => (match === null ? [] : [matchField(match, set.isInertiaMeasured)])),
  ];
}

const matchField = (match: SetMatch, isInertiaMeasured: boolean): Card["fields"][number] => ({
  label: `Irons to ${setValue(match.quantity, match.target)}, their middle${match.quantity === "inertiaKgCm2" && !isInertiaMeasured ? ", by their parts" : ""}`,
  value: line(matchWords(match)),
});

function dataOf({ rows, missing, set }: GapsFacts): { readonly [key: string]: Json } {
  return {
    gaps: rows.map(({ stronger, weaker, gapDeg, limits, flag }) => ({
      stronger: stronger.label,
      strongerLoftDeg: stronger.loftDeg,
      weaker: weaker.label,
      weakerLoftDeg: weaker.loftDeg,
      gapDeg,
      leastDeg: limits.minDeg,
      mostDeg: limits.maxDeg,
      flag,
    })),
    missing,
    steps: set === null ? null : set.steps.steps.map((step) => ({ ...step })),
    swingWeightMatch: set?.swingWeight == null ? null : matchData(set.swingWeight),
    inertiaMatch: set?.inertia == null ? null : matchData(set.inertia),
  };
}

/** Gap by gap, those to look at told by name; what else a bag of the record says of its irons behind More. */
export function gapsReply(facts: GapsFacts): Reply {
  const flagged = facts.rows.filter(({ flag }) => flag !== null).length;
  const said =
    facts.rows.length === 0 ? "too few measured" : flagged === 0 ? "all even" : `${flagged} of ${plural(facts.rows.length, "gap")} to look at`;
  return reply(
    calcCard({
      view: "gaps",
      title: `${facts.named === null ? "Squared lofts" : `${facts.named}, squared lofts`}: ${said}`,
      tone: flagged === 0 ? "plain" : "attention",
      inputs: [...facts.inputs, goodGaps],
      lines: [...facts.rows.map(gapLine), ...recordLines(facts)],
      fields: facts.set === null ? [] : setFields(facts.set),
      leavesOut:
        "carry: distance for a degree falls with loft, so check carry gaps on the range too. Lofts of one gauge, each gap to 0.2°; the putter is left out.",
      data: dataOf(facts),
    }),
  );
}
