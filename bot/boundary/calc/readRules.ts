import type { ClubFamily } from "../../../core/kinds.ts";
import { clubFamily } from "../../../core/kinds.ts";
import type { ClubFacts } from "../../../core/rules/clubFacts.ts";
import { type LocalRule, localRules } from "../../../core/rules/ruleTypes.ts";
import { clubAt } from "../clubAt.ts";
import type { NamedPlayer } from "../reading.ts";
import { type BagRef, bagRefAt } from "./bagRefAt.ts";
import { type CalcWords, calcWords, withoutLead } from "./calcWords.ts";
import { type ClubRef, clubRefAt } from "./clubRefAt.ts";
import { type CalcFault, needed, type Understood, type ValuesOf } from "./fields.ts";
import { readFields } from "./readFields.ts";
import { localFields, measuredFacts, rulesFields, seenFacts } from "./rulesFields.ts";

/** The club asked about: typed, of the record, or every club of a bag. */
export type RulesSubject =
  | { readonly kind: "typed"; readonly family: ClubFamily; readonly shown: string }
  | { readonly kind: "club"; readonly ref: ClubRef }
  | { readonly kind: "bag"; readonly ref: BagRef };

export interface RulesQuestion {
  /** Null when there is a fault. */
  readonly subject: RulesSubject | null;
  readonly facts: Omit<ClubFacts, "family">;
  readonly adopted: readonly LocalRule[];
  readonly understood: readonly Understood[];
  readonly faults: readonly CalcFault[];
}

interface SubjectHit {
  readonly subject: RulesSubject | null;
  readonly fault: CalcFault | null;
  readonly from: number;
  readonly next: number;
}

type Values = ValuesOf<typeof rulesFields>;

/** Units of one quantity alone: said behind its value again. */
const units: Readonly<Record<string, string>> = { volume: "cm³", ct: "µs", "groove area": "mm²", "punch area": "mm²" };
const unitWords = /(\d)\s*(?:cc|ccm|cm3|cm³|us|[µμ]s|mm2|mm²)(?![a-z\d])/gi;
const families: Readonly<Record<string, ClubFamily>> = { iron: "iron", wedge: "wedge", wood: "fairway", fairway: "fairway", hybrid: "hybrid" };

/** Reads a club and what was measured of it: `driver length 46.5, ct 240`, `oxtoby driver, local rule 46`, `oxtoby`. */
export function readRules(text: string, players: readonly NamedPlayer[]): RulesQuestion {
  const source = calcWords(withoutLead(text).replace(unitWords, "$1"));
  const hit = ofRecord(source, players) ?? typedClub(source);
  const words = hit === null ? source.words : [...source.words.slice(0, hit.from), ...source.words.slice(hit.next)];
  const { values, understood, faults } = readFields({ ...source, words }, rulesFields);
  const lacking = hit === null ? [needed("a club, such as driver, 7i, wedge, putter or oxtoby driver")] : [];
  const known = hit?.fault ?? null;
  return {
    subject: hit?.subject ?? null,
    facts: factsOf(values),
    adopted: localRules.filter((rule) => values[rule] !== undefined),
    understood: understood.map(withUnit),
    faults: [...(known === null ? lacking : [known]), ...faults.map(withFewNames)],
  };
}

function ofRecord(source: CalcWords, players: readonly NamedPlayer[]): SubjectHit | null {
  if (clubAt(source.words, 0) !== null) return null;
  const bag = bagRefAt(source, 0, players);
  const ofBag = bag === null || isClubNext(source, bag.next) ? null : bag;
  if (ofBag !== null) {
    const subject = ofBag.ref === null ? null : ({ kind: "bag", ref: ofBag.ref } as const);
    return { subject, fault: ofBag.fault, from: 0, next: ofBag.next };
  }
  const hit = clubRefAt(source, 0, players);
  return hit === null ? null : { subject: hit.ref === null ? null : { kind: "club", ref: hit.ref }, fault: hit.fault, from: 0, next: hit.next };
}

const isClubNext = ({ words }: CalcWords, at: number): boolean =>
  clubAt(words, at) !== null || words[at]?.text === "backup" || words[at]?.text === "gamer";

/** The first club named, `wedge` and `iron` among them: the rules ask for no more. */
function typedClub(source: CalcWords): SubjectHit | null {
  for (let at = 0; at < source.words.length; at += 1) {
    const hit = clubAt(source.words, at);
    const text = source.words[at]?.text ?? "";
    const name = hit?.kind === "clubs" ? hit.clubs[0] : undefined;
    const family = name === undefined ? (Object.hasOwn(families, text) ? families[text] : null) : clubFamily(name);
    if (hit !== null && family != null) return { subject: { kind: "typed", family, shown: name ?? text }, fault: null, from: at, next: hit.next };
  }
  return null;
}

function factsOf(values: Values): Omit<ClubFacts, "family"> {
  const known: Readonly<Partial<Record<string, Values[keyof Values]>>> = values;
  const measured = Object.entries(measuredFacts).flatMap(([name, fact]) => {
    const value = known[name];
    return typeof value === "object" && "value" in value ? [[fact, value.value] as const] : [];
  });
  const seen = Object.entries(seenFacts).flatMap(([name, fact]) => (known[name] === undefined ? [] : [[fact, known[name] === "yes"] as const]));
  return Object.fromEntries([...measured, ...seen]);
}

/** All the names there are would fill a phone. */
const usualNames = ["length", "loft", "lie", "volume", "ct", "inertia", "grip length", "rib", "groove width", "adjustable", "local rule 46 and more"];
const withFewNames = (fault: CalcFault): CalcFault =>
  fault.accepted.kind === "names" ? { ...fault, accepted: { kind: "names", names: usualNames } } : fault;

function withUnit(input: Understood): Understood {
  if (Object.hasOwn(localFields, input.name)) return { ...input, name: "" };
  const unit = Object.hasOwn(units, input.name) ? units[input.name] : undefined;
  return unit === undefined ? input : { ...input, values: input.values.map((value) => ({ ...value, unit })) };
}
