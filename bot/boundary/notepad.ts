import type { Amount, BroughtBy, ByWish, Clauses, Destination, Like, Purpose, Wish } from "../../core/buildSheet/buildRequest.ts";
import { type ClubFamily, type ClubName, clubFamily, type OrderKind } from "../../core/kinds.ts";
import { MM_PER_INCH } from "../../core/quantity/units.ts";
import type { ClubSet } from "./clubAt.ts";
import { nearestNumbers } from "./nearestNumbers.ts";
import { changeRangeOf, type RangedQuantity, rangeOf } from "./quantityRanges.ts";
import type { GaugedQuantity, Mending, NamedPlayer, Place, Problem, ProblemCode, ReadingContext } from "./reading.ts";
import type { Word } from "./wordsOf.ts";

/** What a reader has noted of a message so far. Readers take a word's index and return the index after what they read. */
export interface Notepad {
  readonly text: string;
  readonly words: Word[];
  readonly end: number;
  readonly context: ReadingContext;
  readonly mode: "order" | "revise" | "measured";
  readonly kind: OrderKind | null;
  /** The word the kind was named by, null when none was or it stood elsewhere than first. */
  readonly kindAt: number | null;
  readonly wishes: Map<string, { readonly wish: Wish<unknown>; readonly place: Place }>;
  readonly problems: Problem[];
  readonly mendings: Mending[];
  /** What can be judged only when the club is known. */
  readonly later: (() => void)[];
  readonly unread: { readonly at: number; readonly guess: string | null }[];
  readonly remarks: number[];
  player: NamedPlayer | null;
  /** The word the player's name begins at. */
  playerStart: number;
  playerAsked: boolean;
  readonly clubs: ClubName[];
  clubAsked: boolean;
  /** Sets named by a word alone, filled from the player's bag once all words are read. */
  readonly sets: NamedSet[];
  /** Clubs left out of those sets. */
  readonly except: ClubName[];
  /** Clubs that leave the bag. */
  readonly out: ClubName[];
  count: number;
  like: Like | null;
  by: Wish<ByWish> | null;
  to: Destination | null;
  purpose: Purpose;
  urgent: boolean;
  broughtBy: BroughtBy | null;
  note: string | null;
  /** The first words that lean on another club. */
  leaning: Place | null;
  /** What was read last, and where it ended: a bare number after a club is its stamp. */
  last: "kind" | "player" | "club" | "grip" | "clause";
  lastEnd: number;
  /** How far a note or stamp took the text: a `go` on its line is part of it. */
  restEnd: number;
  inRemark: boolean;
  /** How many words may still be compared with names and trade words: an order has few misspelt ones. */
  nearLooks: number;
}

/** `irons`, `woods`, `whole bag`: which clubs of it the player has is on record. */
export interface NamedSet {
  readonly set: ClubSet;
  readonly choices: readonly string[];
  readonly from: number;
  readonly next: number;
}

const MOST_NEAR_LOOKS = 24;

export type Reader = (pad: Notepad, at: number) => number;
export type Option = Problem["options"][number];

export function newNotepad(text: string, words: readonly Word[], context: ReadingContext, rest: Pick<Notepad, "mode" | "kind" | "kindAt">): Notepad {
  return {
    text,
    words: [...words],
    end: words.length,
    context,
    ...rest,
    wishes: new Map(),
    problems: [],
    mendings: [],
    later: [],
    unread: [],
    remarks: [],
    player: null,
    playerStart: 0,
    playerAsked: false,
    clubs: [],
    clubAsked: false,
    sets: [],
    except: [],
    out: [],
    count: 1,
    like: null,
    by: null,
    to: null,
    purpose: "gamer",
    urgent: false,
    broughtBy: null,
    note: null,
    leaning: null,
    last: "kind",
    lastEnd: 0,
    restEnd: 0,
    inRemark: false,
    nearLooks: MOST_NEAR_LOOKS,
  };
}

export const wordAt = (pad: Notepad, at: number): string => pad.words[at]?.text ?? "";
/** Whether a word follows the one before it with nothing stronger than a space between. */
export const follows = (pad: Notepad, at: number): boolean => pad.words[at]?.gap === "space" || pad.words[at]?.gap === "tight";
export const familyOf = (pad: Notepad): ClubFamily | null => (pad.clubs[0] === undefined ? null : clubFamily(pad.clubs[0]));

export function placeOf(pad: Notepad, from: number, next: number): Place {
  const start = pad.words[from]?.from ?? pad.text.length;
  return { from: start, to: pad.words[next - 1]?.to ?? start };
}

export function typed(pad: Notepad, from: number, next: number): string {
  const place = placeOf(pad, from, next);
  return pad.text.slice(place.from, place.to);
}

export const asOptions = (replacements: readonly string[]): readonly Option[] => replacements.map((text) => ({ label: text, replacement: text }));

export function ask(pad: Notepad, code: ProblemCode, place: Place, accepted: string, options: readonly Option[] = []): void {
  pad.problems.push({ code, place, word: pad.text.slice(place.from, place.to), accepted, options });
}

export function mend(pad: Notepad, from: number, next: number, read: string, why: Mending["why"]): void {
  pad.mendings.push({ place: placeOf(pad, from, next), typed: typed(pad, from, next), read, why });
}

/** Writes a clause down; the same clause with another value is asked. */
export function wish<K extends keyof Clauses>(pad: Notepad, key: K, value: NonNullable<Clauses[K]>["value"], from: number, next: number): void {
  writeDown(pad, key, value, from, next);
}

/** Writes down what only a gauge reads; the same with another value is asked. */
export function gauged(pad: Notepad, key: GaugedQuantity, value: number, from: number, next: number): void {
  writeDown(pad, key, { kind: "exactly", value } satisfies Amount, from, next);
}

function writeDown(pad: Notepad, key: string, value: unknown, from: number, next: number): void {
  const before = pad.wishes.get(key);
  const asWritten = typed(pad, from, next);
  if (before === undefined) pad.wishes.set(key, { wish: { value, asWritten }, place: placeOf(pad, from, next) });
  else if (JSON.stringify(before.wish.value) !== JSON.stringify(value)) {
    ask(pad, "twice", placeOf(pad, from, next), "one value for each clause", asOptions([before.wish.asWritten]));
  }
}

/** A number with its place, ready to be judged: `perUnit` turns the written unit into the quantity's own. */
export interface WrittenAmount {
  readonly amount: Amount;
  readonly perUnit: number;
  readonly numberFrom: number;
  readonly numberEnd: number;
  readonly next: number;
}

/** Notes a number for a clause; whether the club can have it is judged when the club is known. */
export function wishAmount(pad: Notepad, key: Exclude<RangedQuantity, "stampedLoftDeg">, from: number, written: WrittenAmount): void {
  if (written.amount.kind !== "exactly") lean(pad, from, written.next);
  pad.later.push(() => judgeAmount(pad, key, from, written));
}

/** Notes an amount when the club can have it, else asks. */
export function judgeAmount(pad: Notepad, key: Exclude<RangedQuantity, "stampedLoftDeg">, from: number, written: WrittenAmount): void {
  if (isAccepted(pad, key, written)) wish(pad, key, written.amount, from, written.next);
}

export function wishStamp(pad: Notepad, value: number, at: number, next: number): void {
  pad.later.push(() => {
    const written: WrittenAmount = { amount: { kind: "exactly", value }, perUnit: 1, numberFrom: at, numberEnd: next, next };
    if (isAccepted(pad, "stampedLoftDeg", written)) wish(pad, "stampedLoftDeg", value, at, next);
  });
}

export function lean(pad: Notepad, from: number, next: number): void {
  pad.leaning ??= placeOf(pad, from, next);
}

/** Whether a club can have such a value; asks with the nearest guesses when not. */
export function isAccepted(pad: Notepad, key: RangedQuantity, written: WrittenAmount): boolean {
  const { amount } = written;
  if (amount.kind === "same") return true;
  const range = amount.kind === "exactly" ? rangeOf(key, familyOf(pad)) : changeRangeOf(key);
  const isInside = (value: number): boolean => value >= range.min - 1e-9 && value <= range.max + 1e-9;
  if (isInside(amount.value)) return true;
  const misfit = (value: number): number | null => (isInside(value) ? Math.abs(value - range.typical) : null);
  ask(pad, "value-out-of-range", placeOf(pad, written.numberFrom, written.numberEnd), range.accepted, guessesOf(pad, key, written, misfit));
  return false;
}

function guessesOf(pad: Notepad, key: RangedQuantity, written: WrittenAmount, misfit: (value: number) => number | null): readonly Option[] {
  if (written.numberEnd - written.numberFrom !== 1) return [];
  const parts = /^([+-]?)(?:([a-g])?)(\d{1,6}(?:\.\d{1,4})?)(.{0,3})$/.exec(wordAt(pad, written.numberFrom));
  if (parts === null) return [];
  const [, sign = "", letter = "", digits = "", unit = ""] = parts;
  const letterPoints = letter === "" ? 0 : (letter.charCodeAt(0) - "d".charCodeAt(0)) * 10;
  const isUnitFree = unit === "" && written.next === written.numberEnd && (key === "lengthMm" || key === "tipTrimMm");
  const perUnit = (value: number): number => (isUnitFree ? (value >= 100 ? 1 : MM_PER_INCH) : written.perUnit);
  const turned = (value: number): number => (sign === "-" ? -value : value) * perUnit(value) + letterPoints;
  const judged = (value: number): number | null => (letter !== "" && value > 10 ? null : misfit(turned(value)));
  return asOptions(nearestNumbers(digits, judged).map((guess) => sign + letter + guess + unit));
}
