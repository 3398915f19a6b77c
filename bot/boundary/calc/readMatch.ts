import type { NamedPlayer } from "../reading.ts";
import { type BagRef, bagRefAt } from "./bagRefAt.ts";
import { type CalcWords, calcWords, typedBetween, withoutLead } from "./calcWords.ts";
import { type ClubRef, clubRefAt } from "./clubRefAt.ts";
import { type CalcFault, needed } from "./fields.ts";
import { matchFields, setFields } from "./matchFields.ts";
import { type CalcReading, readFields } from "./readFields.ts";

/** What a comparison is about. */
export type MatchQuestion =
  | { readonly kind: "clubs"; readonly refs: readonly [ClubRef, ClubRef | null]; readonly faults: readonly CalcFault[] }
  | ({ readonly kind: "set"; readonly bag: BagRef } & CalcReading<typeof setFields>)
  | ({ readonly kind: "typed" } & CalcReading<typeof matchFields>);

const between = new Set(["vs", "v", "versus", "against", "and", "with", "to", "or", "its", "his", "her", "on"]);
const PAIR = 2;

/** Reads two clubs of the record, a set of one bag, or typed pairs; every fault at once. */
export function readMatch(text: string, players: readonly NamedPlayer[]): MatchQuestion {
  const source = calcWords(withoutLead(text));
  const bag = bagRefAt(source, 0, players);
  if (bag?.ref?.said === true) {
    return { kind: "set", bag: bag.ref, ...readFields({ ...source, words: source.words.slice(bag.next) }, setFields) };
  }
  const first = clubRefAt(source, 0, players);
  if (first === null) return typedPairs(source, bag?.fault ?? null);
  const second = secondClub(source, first.next, first.ref, players);
  const faults = [first.fault, ...second.faults].filter((fault) => fault !== null);
  return first.ref === null ? { ...typedPairs({ ...source, words: [] }, null), faults } : { kind: "clubs", refs: [first.ref, second.ref], faults };
}

function secondClub(source: CalcWords, from: number, first: ClubRef | null, players: readonly NamedPlayer[]) {
  let at = from;
  while (between.has(source.words[at]?.text ?? "")) at += 1;
  const text = source.words[at]?.text;
  if (text === undefined) return { ref: null, faults: [] };
  if (first?.kind === "bag" && (text === "backup" || text === "gamer")) {
    return { ref: { ...first, from: text } as const, faults: leftOver(source, at + 1) };
  }
  const hit = clubRefAt(source, at, players);
  return hit === null ? { ref: null, faults: leftOver(source, at) } : { ref: hit.ref, faults: [hit.fault, ...leftOver(source, hit.next)] };
}

function leftOver(source: CalcWords, at: number): readonly CalcFault[] {
  if (at >= source.words.length) return [];
  const words = ["backup", "toll driver", "order 57"];
  return [{ word: typedBetween(source, at, source.words.length), accepted: { kind: "words", name: "the other club", words }, guess: null }];
}

/** Each name with a value for either club. */
function typedPairs(source: CalcWords, fault: CalcFault | null): MatchQuestion {
  const reading = readFields(source, matchFields);
  const uneven = Object.entries(reading.values).flatMap(([name, numbers]) =>
    numbers.length === PAIR
      ? []
      : [{ word: `${name} ${numbers.map(({ written }) => written).join(" ")}`, accepted: pairOf(name, numbers[0]?.written ?? ""), guess: null }],
  );
  const faults = [...(fault === null ? reading.faults : [fault]), ...uneven];
  const isEmpty = faults.length === 0 && reading.understood.length === 0;
  return { kind: "typed", ...reading, faults: isEmpty ? [needed("two clubs, or values in pairs")] : faults };
}

const pairOf = (name: string, written: string): CalcFault["accepted"] => ({
  kind: "words",
  name,
  words: [`a value for either club, such as ${name} ${written} ${written}`],
});
