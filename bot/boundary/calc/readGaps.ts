import { type ClubName, clubFamily } from "../../../core/kinds.ts";
import { clubAt, wedgeOfLoft } from "../clubAt.ts";
import { rangeOf } from "../quantityRanges.ts";
import type { NamedPlayer } from "../reading.ts";
import { type BagRef, bagRefAt } from "./bagRefAt.ts";
import { type CalcWords, calcWords, typedBetween, withoutLead } from "./calcWords.ts";
import type { CalcFault, Understood, WrittenNumber } from "./fields.ts";
import { type QuantityHit, quantityAt } from "./quantityAt.ts";

/** A club of a typed set; its loft is null where none stands behind it. */
export interface TypedLoft {
  readonly club: ClubName;
  /** `7i`, or `52°` for a wedge told by its loft alone. */
  readonly label: string;
  readonly isNamed: boolean;
  readonly loft: WrittenNumber | null;
}

export interface GapsQuestion {
  readonly bag: BagRef | null;
  readonly clubs: readonly TypedLoft[];
  readonly understood: readonly Understood[];
  readonly faults: readonly CalcFault[];
}

const MOST_CLUBS = 40;
const fillers = new Set(["loft", "lofts", "is", "and", "at", "gaps", "gap", "of", "true", "squared", "please", "pls"]);
const WEDGES_BY_LOFT = { kind: "range", name: "a loft without its club", min: 46, max: 64, unit: "°" } as const;

interface Step {
  readonly club: TypedLoft | null;
  readonly fault: CalcFault | null;
  readonly next: number;
}

/** `46/50/54` and `5i27` with their words apart. */
const spaced = (text: string): string =>
  text.replace(/(?<![\d.,])([4-6]\d(?:[.,]\d+)?)\/(?=[4-6]\d)/g, "$1 ").replace(/\b(\d[iwh])(?=\d{2}(?!\d))/gi, "$1 ");

/** Reads a bag of the record (`oxtoby irons`) or measured lofts: `4i 24 5i 27 pw 47 52 56`; every fault at once. */
export function readGaps(text: string, players: readonly NamedPlayer[]): GapsQuestion {
  const source = calcWords(spaced(withoutLead(text)));
  const bag = bagRefAt(source, 0, players);
  const steps = stepsFrom(source, bag?.next ?? 0, bag !== null);
  const clubs = steps.flatMap(({ club }) => club ?? []);
  const faults = [...(bag?.fault == null ? [] : [bag.fault]), ...steps.flatMap(({ fault }) => fault ?? []), ...doubled(clubs), ...overfull(clubs)];
  return { bag: bag?.ref ?? null, clubs, understood: clubs.map(understoodOf), faults };
}

function stepsFrom(source: CalcWords, start: number, afterBag: boolean): readonly Step[] {
  const steps: Step[] = [];
  for (let at = start; at < source.words.length; ) {
    const step = stepAt(source, at, afterBag);
    steps.push(step);
    at = Math.max(at + 1, step.next);
  }
  return steps;
}

function stepAt(source: CalcWords, at: number, afterBag: boolean): Step {
  if (fillers.has(source.words[at]?.text ?? "")) return { club: null, fault: null, next: at + 1 };
  if (afterBag) return afterPlayer(source, at);
  return clubStep(source, at) ?? bareStep(source, at) ?? unread(source, at);
}

const loftAt = (source: CalcWords, at: number, club: ClubName): QuantityHit | null => {
  const { min, max, typical } = rangeOf("squaredLoftDeg", clubFamily(club));
  return quantityAt(source, at, { name: `${club} loft`, measure: "angle", min, max, usual: typical });
};

/** `7i 35`, `pw = 47`, `5i` alone. */
function clubStep(source: CalcWords, at: number): Step | null {
  const hit = clubAt(source.words, at);
  if (hit === null) return null;
  const [club, ...others] = hit.kind === "clubs" ? hit.clubs : [];
  if (club === undefined || others.length > 0) {
    const words = hit.kind === "which" ? hit.choices : hit.kind === "unknown" ? hit.nearest : others.slice(0, 3);
    const skipped = quantityAt(source, hit.next, { name: "loft", measure: "angle", min: -90, max: 90 })?.next ?? hit.next;
    return {
      club: null,
      fault: { word: typedBetween(source, at, hit.next), accepted: { kind: "words", name: "club", words }, guess: null },
      next: skipped,
    };
  }
  const from = fillers.has(source.words[hit.next]?.text ?? "") ? hit.next + 1 : hit.next;
  const loft = loftAt(source, from, club);
  if (loft?.fault != null) return { club: null, fault: loft.fault, next: loft.next };
  return { club: { club, label: club, isNamed: true, loft: loft?.number ?? null }, fault: null, next: loft?.next ?? hit.next };
}

/** `52` alone is a wedge. */
function bareStep(source: CalcWords, at: number): Step | null {
  const hit = quantityAt(source, at, { name: "loft", measure: "angle", min: -90, max: 90 });
  if (hit === null) return null;
  const club = wedgeOfLoft(hit.number.value);
  if (club !== null) return { club: { club, label: `${hit.number.written}°`, isNamed: false, loft: hit.number }, fault: null, next: hit.next };
  return { club: null, fault: { word: typedBetween(source, at, hit.next), accepted: WEDGES_BY_LOFT, guess: null }, next: hit.next };
}

function unread(source: CalcWords, at: number): Step {
  const accepted = { kind: "words", name: "a club and its loft", words: ["7i 35", "pw 47", "52"] } as const;
  return { club: null, fault: { word: typedBetween(source, at, at + 1), accepted, guess: null }, next: at + 1 };
}

function afterPlayer(source: CalcWords, at: number): Step {
  const accepted = { kind: "words", name: "after the player", words: ["bag", "woods", "irons", "wedges"] } as const;
  const next = source.words.length;
  return { club: null, fault: { word: typedBetween(source, at, next), accepted, guess: null }, next };
}

function doubled(clubs: readonly TypedLoft[]): readonly CalcFault[] {
  const named = clubs.filter(({ isNamed }) => isNamed).map(({ club }) => club);
  const twice = new Set(named.filter((club, index) => named.indexOf(club) !== index));
  return [...twice].map((club) => ({ word: club, accepted: { kind: "once", name: club }, guess: null }));
}

const overfull = (clubs: readonly TypedLoft[]): readonly CalcFault[] =>
  clubs.length <= MOST_CLUBS
    ? []
    : [{ word: `${clubs.length} clubs`, accepted: { kind: "range", name: "clubs", min: 2, max: MOST_CLUBS, unit: "" }, guess: null }];

const understoodOf = ({ label, isNamed, loft }: TypedLoft): Understood => ({
  name: isNamed ? label : "wedge",
  values: loft === null ? [{ written: "not measured", unit: "" }] : [{ written: loft.written, unit: "°" }],
  between: ",",
  assumed: false,
});
