import { clubAt } from "../clubAt.ts";
import { numberAt } from "../numberAt.ts";
import { type CalcWords, goesOn, typedBetween } from "./calcWords.ts";
import { fieldNames, nameAt, nearestWord } from "./fieldNames.ts";
import type { CalcFault, Field, Fields, Understood, ValuesOf, WrittenPart } from "./fields.ts";
import { partAt } from "./partAt.ts";
import { acceptedNumber, quantityAt } from "./quantityAt.ts";
import { bareWordAt, clauseEnd, type Pad, takePart, takeValue, takeWord } from "./takeValue.ts";

export interface CalcReading<F extends Fields> {
  readonly values: ValuesOf<F>;
  readonly parts: readonly WrittenPart[];
  /** Every input, in the order it was written. */
  readonly understood: readonly Understood[];
  readonly faults: readonly CalcFault[];
}

const fillers = new Set(
  "and with then plus the a of is to please pls how much what weight my i if we it from get do does before already for at me need make".split(" "),
);
const afterName = new Set(["is", "of", "to", "by"]);

/**
 * Reads named values: `name value unit`, `name=value`, `name: value`, parted by commas, lines or just the next name.
 *
 * Every fault at once, nothing thrown, each word looked at a fixed number of times.
 *
 * @param source - the words
 * @param fields - what the view takes, by name
 * @param options - `otherParts`: a name nobody knows before a mass at a place is a part of its own
 */
export function readFields<F extends Fields>(source: CalcWords, fields: F, options: { readonly otherParts?: boolean } = {}): CalcReading<F> {
  const pad: Pad = {
    source,
    fields,
    names: fieldNames(fields),
    otherParts: options.otherParts === true,
    values: new Map(),
    parts: [],
    understood: [],
    faults: [],
  };
  for (let at = 0; at < source.words.length; ) at = Math.max(at + 1, readOne(pad, at));
  const { parts, understood, faults } = pad;
  return { values: Object.fromEntries(pad.values) as ValuesOf<F>, parts, understood, faults };
}

function readOne(pad: Pad, at: number): number {
  const named = nameAt(pad.source, at, pad.names);
  if (named !== null) return readNamed(pad, named.name, at, named.next);
  return readBare(pad, at) ?? (isFiller(pad, at) ? at + 1 : (readOtherPart(pad, at) ?? refuse(pad, at)));
}

const isFiller = (pad: Pad, at: number): boolean => fillers.has(pad.source.words[at]?.text ?? "");

function readNamed(pad: Pad, name: string, at: number, behind: number): number {
  const field = pad.fields[name];
  const start = goesOn(pad.source, behind) && afterName.has(pad.source.words[behind]?.text ?? "") ? behind + 1 : behind;
  const next = field === undefined || !goesOn(pad.source, start) ? null : takeValue(pad, name, field, start);
  if (next !== null) return next;
  if (isFiller(pad, at) || field?.asked === true) return behind;
  const end = clauseEnd(pad, behind - 1);
  const guess = field?.kind === "part" ? guessedPart(pad.source, name, start, end) : null;
  if (field !== undefined) pad.faults.push({ word: typedBetween(pad.source, at, end), accepted: accepted(name, field), guess });
  return end;
}

/** `head 200 44.5` is likely a mass at a place. */
function guessedPart(source: CalcWords, name: string, at: number, end: number): string | null {
  const mass = numberAt(source.words, at);
  const place = mass === null ? null : numberAt(source.words, mass.next);
  if (mass === null || place === null || place.next !== end || mass.value <= 0 || place.value <= 0) return null;
  return `${name} ${typedBetween(source, at, mass.next)} at ${typedBetween(source, mass.next, place.next)}`;
}

/** A value without a name goes to the field that waits for its kind. */
function readBare(pad: Pad, at: number): number | null {
  const word = bareWordAt(pad, at);
  if (word !== null) return takeWord(pad, word.name, word.field, at);
  const waiting = Object.entries(pad.fields).flatMap(([name, field]) => {
    const isNumeric = field.kind === "number" || field.kind === "numbers";
    const hit = isNumeric && field.bare === true && !pad.values.has(name) ? quantityAt(pad.source, at, { ...field, name }) : null;
    return hit === null || hit.fault?.accepted.kind === "units" ? [] : [{ name, field, fits: hit.fault === null }];
  });
  const best = waiting.find(({ fits }) => fits) ?? waiting[0];
  return best === undefined ? null : takeValue(pad, best.name, best.field, at);
}

const LONGEST_PART_NAME = 3;

/** `hot melt 4 at 44`: a name nobody knows before a mass at a place, when no known name was misspelt. */
function readOtherPart(pad: Pad, at: number): number | null {
  if (!pad.otherParts || nearestWord(pad.source.words[at]?.text ?? "", pad.names.bySpelling.keys()) !== null) return null;
  for (let next = at + 1; next <= at + LONGEST_PART_NAME && goesOn(pad.source, next); next += 1) {
    const name = typedBetween(pad.source, at, next);
    if (/^[+-]?[\d.]/.test(name) || nameAt(pad.source, next, pad.names) !== null) return null;
    if (partAt(pad.source, next, { name }) !== null) return takePart(pad, { name }, next);
  }
  return null;
}

function refuse(pad: Pad, at: number): number {
  const { source, names, fields } = pad;
  const club = clubAt(source.words, at);
  if (club?.kind === "clubs") {
    const word = typedBetween(source, at, club.next);
    pad.faults.push({ word, accepted: { kind: "words", name: "whose", words: [`oxtoby ${word}`] }, guess: null });
    return club.next;
  }
  const end = clauseEnd(pad, at);
  const guess = nearestWord(source.words[at]?.text ?? "", names.bySpelling.keys());
  pad.faults.push({ word: typedBetween(source, at, end), accepted: { kind: "names", names: Object.keys(fields) }, guess });
  return end;
}

function accepted(name: string, field: Field): CalcFault["accepted"] {
  if (field.kind === "part") return { kind: "part", name };
  if (field.kind === "word") return { kind: "words", name, words: field.words };
  if (field.kind === "text") return { kind: "text", name };
  return acceptedNumber({ ...field, name });
}
