import { type CalcWords, goesOn, typedBetween } from "./calcWords.ts";
import { type FieldNames, nameAt, nearestWord } from "./fieldNames.ts";
import type { CalcFault, Field, Fields, Understood, WrittenPart } from "./fields.ts";
import { partAt, type WantedPart } from "./partAt.ts";
import { quantityAt } from "./quantityAt.ts";

/** What a reading has come to. */
export interface Pad {
  readonly source: CalcWords;
  readonly fields: Fields;
  readonly names: FieldNames;
  readonly otherParts: boolean;
  readonly values: Map<string, unknown>;
  readonly parts: WrittenPart[];
  readonly understood: Understood[];
  readonly faults: CalcFault[];
}

/** Takes the value of a field at a word; null when it is none. */
export function takeValue(pad: Pad, name: string, field: Field, at: number): number | null {
  switch (field.kind) {
    case "number":
      return takeNumber(pad, name, field, at);
    case "numbers":
      return takeNumbers(pad, name, field, at);
    case "part":
      return takePart(pad, { ...field, name }, at);
    case "word":
      return takeWord(pad, name, field, at);
    case "text": {
      const end = clauseEnd(pad, at);
      const text = typedBetween(pad.source, at, end);
      return keep(pad, { name, value: text, values: [{ written: text, unit: "" }], at, next: end });
    }
  }
}

interface Kept {
  readonly name: string;
  readonly value: unknown;
  readonly values: Understood["values"];
  readonly at: number;
  readonly next: number;
}

function keep(pad: Pad, { name, value, values, at, next }: Kept): number {
  if (pad.values.has(name)) {
    pad.faults.push({ word: typedBetween(pad.source, at, next), accepted: { kind: "once", name }, guess: null });
    return next;
  }
  pad.values.set(name, value);
  pad.understood.push({ name, values, between: ",", assumed: false });
  return next;
}

function takeNumber(pad: Pad, name: string, field: Extract<Field, { kind: "number" }>, at: number): number | null {
  const hit = quantityAt(pad.source, at, { ...field, name });
  if (hit === null) return null;
  if (hit.fault === null) return keep(pad, { name, value: hit.number, values: [hit.number], at, next: hit.next });
  pad.faults.push(hit.fault);
  return hit.next;
}

function takeNumbers(pad: Pad, name: string, field: Extract<Field, { kind: "numbers" }>, at: number): number | null {
  const hitAt = (place: number) => quantityAt(pad.source, place, { ...field, name });
  const numbers = [];
  let next = at;
  for (let hit = hitAt(next); hit !== null; hit = hitAt(next)) {
    if (hit.fault === null) numbers.push(hit.number);
    else pad.faults.push(hit.fault);
    next = hit.next;
    if (nameAt(pad.source, next, pad.names) !== null || bareWordAt(pad, next) !== null) break;
    if (pad.source.words[next]?.text === "to" && goesOn(pad.source, next) && hitAt(next + 1) !== null) next += 1;
  }
  return next === at ? null : numbers.length === 0 ? next : keep(pad, { name, value: numbers, values: numbers, at, next });
}

type Words = Extract<Field, { kind: "word" }>;

/** The word of a field that stands here in any of its spellings. */
function wordAt(pad: Pad, { words, spelled = {} }: Words, at: number): { readonly name: string; readonly next: number } | null {
  const bySpelling = new Map([...words.map((word) => [word, word] as const), ...Object.entries(spelled)]);
  const longest = Math.max(...[...bySpelling.keys()].map((spelling) => spelling.split(" ").length));
  return nameAt(pad.source, at, { bySpelling, longest });
}

export function takeWord(pad: Pad, name: string, field: Words, at: number): number {
  const hit = wordAt(pad, field, at);
  if (hit !== null) return keep(pad, { name, value: hit.name, values: [{ written: hit.name, unit: "" }], at, next: hit.next });
  const typed = pad.source.words[at]?.text ?? "";
  pad.faults.push({ word: typed, accepted: { kind: "words", name, words: field.words }, guess: nearestWord(typed, field.words) });
  return at + 1;
}

/** The field that waits for a word without its name and finds it here. */
export function bareWordAt(pad: Pad, at: number): { readonly name: string; readonly field: Words } | null {
  for (const [name, field] of Object.entries(pad.fields)) {
    if (field.kind === "word" && field.bare === true && wordAt(pad, field, at) !== null) return { name, field };
  }
  return null;
}

export function takePart(pad: Pad, wanted: WantedPart, at: number): number | null {
  const hit = partAt(pad.source, at, wanted);
  const { name } = wanted;
  if (hit === null) return null;
  pad.faults.push(...hit.faults);
  const { part } = hit;
  if (part !== null && wanted.once === true && pad.parts.some((known) => known.name === name)) {
    pad.faults.push({ word: typedBetween(pad.source, at, hit.next), accepted: { kind: "once", name }, guess: null });
  } else if (part !== null) {
    pad.parts.push(part);
    pad.understood.push({ name, values: [...(part.mass === null ? [] : [part.mass]), part.place], between: "at", assumed: false });
  }
  return hit.next;
}

/** The end of a clause: the next comma, line or known name. */
export function clauseEnd(pad: Pad, at: number): number {
  let end = at + 1;
  while (goesOn(pad.source, end) && nameAt(pad.source, end, pad.names) === null && bareWordAt(pad, end) === null) end += 1;
  return Math.min(end, pad.source.words.length);
}
