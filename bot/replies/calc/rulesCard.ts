import { MM_PER_INCH } from "../../../core/quantity/units.ts";
import type { ClubFacts } from "../../../core/rules/clubFacts.ts";
import type { Finding } from "../../../core/rules/clubFindings.ts";
import { equipmentRules } from "../../../core/rules/equipmentRules.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Json, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { ruleWords } from "../ruleWords.ts";
import { clubWords, plural } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { directedInputs } from "./directedInputs.ts";
import { ruledFactWords } from "./ruledFactWords.ts";

type Fact = keyof typeof ruledFactWords;

/** A club and what was found of it. */
interface RuledClub {
  readonly shown: string;
  readonly facts: ClubFacts;
  readonly findings: readonly Finding[];
  readonly notChecked: readonly Fact[];
}

export interface RulesFacts {
  readonly named: string;
  readonly inputs: readonly Understood[];
  readonly unit: "in" | "mm";
  /** Of the bag as a whole. */
  readonly bagFindings: readonly Finding[];
  readonly clubs: readonly RuledClub[];
}

const SHOWN_DIGITS = 4;
const digits = (value: number): string => String(Number(value.toPrecision(SHOWN_DIGITS)));
const sided = (value: number, said: string, [more, less]: readonly [string, string]): string =>
  value === 0 ? said : `${said} ${value > 0 ? more : less}`;
const sides = { shaftForwardLeanDeg: ["forward", "backward"], insertProudMm: ["proud", "sunk"] } as const satisfies Readonly<
  Partial<Record<Finding["quantity"], readonly [string, string]>>
>;

/** As finely as a limit is written: 46.01 in is past 46 in. */
function quantityWords({ quantity, unit }: Finding, value: number, lengthUnit: RulesFacts["unit"]): string {
  const side = quantity in sides ? sides[quantity as keyof typeof sides] : undefined;
  const size = side === undefined ? value : Math.abs(value);
  return side === undefined ? sizeWords(size, unit, lengthUnit) : sided(value, sizeWords(size, unit, lengthUnit), side);
}

function sizeWords(size: number, unit: string, lengthUnit: RulesFacts["unit"]): string {
  if (unit === "mm") return lengthUnit === "in" ? `${digits(size / MM_PER_INCH)} in` : `${digits(size)} mm`;
  if (unit === "deg") return `${digits(size)}°`;
  if (unit === "kg·cm²") return `${digits(size * 1000)} g·cm²`;
  return `${digits(size)} ${unit}`.trim();
}

function boundWords({ code, quantity, measured, limit }: Finding): string {
  const exclusive = equipmentRules.limits.find((row) => row.code === code && row.exclusive === true);
  if (exclusive !== undefined) return exclusive.max === undefined ? "more than" : "less than";
  /** 12° backward is past 10° backward, though -12 is below -10. */
  return measured > limit || (quantity in sides && Number(limit) < 0) ? "at most" : "at least";
}

function foundWords(finding: Finding, unit: RulesFacts["unit"]): string {
  const { code, measured, limit } = finding;
  if (typeof measured === "boolean" || typeof limit === "boolean") return ruleWords[code];
  return `${ruleWords[code]} ${quantityWords(finding, measured, unit)}: ${boundWords(finding)} ${quantityWords(finding, limit, unit)}`;
}

/** What else has to be known to weigh a finding. */
function remarks(finding: Finding, unit: RulesFacts["unit"]): readonly string[] {
  const { rule, edition, withinTestTolerance, tolerance, fromMemory, source } = finding;
  return [
    edition.startsWith(rule) ? edition : `${rule}; ${edition}`,
    ...(withinTestTolerance && tolerance !== null
      ? [`inside the bodies' test tolerance of ${sizeWords(tolerance, finding.unit, unit)}: theirs, none to build to`]
      : []),
    ...(fromMemory === "limit" || (fromMemory === "tolerance" && withinTestTolerance) ? [`${fromMemory} from memory: look it up`] : []),
    ...(source.opened || fromMemory === "limit" ? [] : ["as quoted by others"]),
  ];
}

const findingLine = (finding: Finding, of: string, unit: RulesFacts["unit"]): Line =>
  line({ strong: `${of}${foundWords(finding, unit)}` }, `. ${remarks(finding, unit).join("; ")}`);

const worded = (facts: readonly Fact[]): readonly string[] => [...new Set(facts.map((fact) => ruledFactWords[fact]))];

/** The facts of a club that are known, by name. */
const known = ({ family: _family, ...facts }: ClubFacts): readonly Fact[] =>
  (Object.keys(facts) as readonly Fact[]).filter((name) => (facts[name as keyof typeof facts] ?? null) !== null);

function dataOf({ bagFindings, clubs }: RulesFacts): { readonly [key: string]: Json } {
  const plain = ({ code, rule, edition, quantity, measured, limit, unit, tolerance, withinTestTolerance, fromMemory }: Finding): Json => ({
    ...{ code, rule, edition, quantity, measured, limit, unit, tolerance, withinTestTolerance, fromMemory },
  });
  return {
    clubCount: clubs.length,
    findings: bagFindings.map(plain),
    clubs: clubs.map(({ shown, facts, findings, notChecked }) => ({ club: shown, ...facts, findings: findings.map(plain), notChecked })),
  };
}

/** What is found against the rules, each with rule and edition, and what nobody looked at. */
export function rulesReply(facts: RulesFacts): Reply {
  const { clubs, unit } = facts;
  const isOne = clubs.length === 1;
  const found = [
    ...facts.bagFindings.map((finding) => findingLine(finding, "", unit)),
    ...clubs.flatMap(({ shown, findings }) => findings.map((finding) => findingLine(finding, isOne ? "" : `${clubWords(shown)}: `, unit))),
  ];
  const [first, ...rest] = clubs.map((club) => known(club.facts));
  const ofAll = worded((first ?? []).filter((fact) => rest.every((facts) => facts.includes(fact))));
  const notChecked = worded(clubs.flatMap((club) => club.notChecked));
  const count = isOne ? "" : `${plural(clubs.length, "club")}, `;
  return reply(
    calcCard({
      view: "rules",
      title: `Rules, ${facts.named}: ${count}${found.length === 0 ? "nothing found in what was measured" : `${plural(found.length, "warning")}`}`,
      tone: found.length === 0 ? "plain" : "attention",
      inputs: directedInputs(facts.inputs, { lean: sides.shaftForwardLeanDeg }),
      lines: [
        ...found,
        line(`Known${isOne ? "" : " of all"}: ${ofAll.length === 0 ? "nothing" : ofAll.join(", ")}`),
        ...(notChecked.length === 0 ? [] : [line(`Not checked: ${plural(notChecked.length, "more thing")}, behind More`)]),
        line("Warnings, no ruling: only the governing bodies rule."),
      ],
      fields: notChecked.length === 0 ? [] : [{ label: "Not checked", value: line(notChecked.join(", ")) }],
      leavesOut: "what nobody measured, and rules no gauge can read. Only the governing bodies rule.",
      data: dataOf(facts),
    }),
  );
}
