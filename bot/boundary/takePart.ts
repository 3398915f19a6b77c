import { clubFamily } from "../../core/kinds.ts";
import { ask, asOptions, follows, mend, type Notepad, placeOf, wish, wishStamp, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import type { PartHit } from "./partAt.ts";
import { rangeOf } from "./quantityRanges.ts";
import { noteComma } from "./takeAmount.ts";

export type PartKey = "headModel" | "shaft" | "grip" | "grind";

export const namesOf = (pad: Notepad, key: PartKey): readonly string[] => {
  if (key === "headModel") return pad.context.headModels;
  if (key === "shaft") return pad.context.shaftModels;
  return key === "grip" ? pad.context.gripModels : pad.context.grinds;
};

/** Writes the model down when one is clear, else asks which. */
export function takePart(pad: Notepad, key: PartKey, at: number, found: PartHit): number {
  const hit = key === "shaft" ? withFlex(pad, found) : found;
  const { next } = hit;
  const [only] = hit.models;
  const looksFurther = key === "shaft" && hit.models.length > 1 && follows(pad, hit.next) && /^(\d{2,3}[rsx]?|[rsx])$/.test(wordAt(pad, hit.next));
  if (hit.models.length === 1 && only !== undefined) {
    const model = key === "headModel" ? numberedModel(pad, only) : only;
    if (hit.misspelt) mend(pad, at, hit.next, model, "misspelt");
    wish(pad, key, model, at, next);
  } else {
    const end = looksFurther ? furtherEnd(pad, hit.next) : next;
    ask(pad, looksFurther ? "unknown-part" : "which-part", placeOf(pad, at, end), hit.models.join(", "), asOptions(hit.models));
    return end;
  }
  return next;
}

const furtherEnd = (pad: Notepad, at: number): number => (follows(pad, at + 1) && /^[rsx]$/.test(wordAt(pad, at + 1)) ? at + 2 : at + 1);

/** `dunlin 60 flex x`, `dunlin 60 x flex`. */
function withFlex(pad: Notepad, hit: PartHit): PartHit {
  if (wordAt(pad, hit.next) !== "flex" || !follows(pad, hit.next)) return hit;
  const fitting = hit.models.filter((model) => model.toLowerCase().endsWith(` ${wordAt(pad, hit.next + 1)}`));
  return fitting.length === 0 ? { ...hit, next: hit.next + 1 } : { ...hit, models: fitting, next: hit.next + 2 };
}

/** `cairn` on a 3w is the record's `Cairn 3` when it has one. */
function numberedModel(pad: Notepad, model: string): string {
  const number = /^\d/.exec(pad.clubs[0] ?? "")?.[0];
  const numbered = number === undefined ? "" : `${model} ${number}`;
  return pad.context.headModels.includes(numbered) ? numbered : model;
}

/** The stamp written after a head's model: `cairn 9`. */
function stampAfter(pad: Notepad, at: number): number {
  const start = wordAt(pad, at) === "stamped" ? at + 1 : at;
  const hit = follows(pad, at) ? numberAt(pad.words, start) : null;
  if (hit === null || hit.signed || hit.unit === "in" || hit.unit === "mm" || hit.unit === "g" || hit.fraction) return at;
  const inSomeStamp = hit.value >= 6 && hit.value <= 66;
  const family = pad.clubs[0] === undefined ? null : clubFamily(pad.clubs[0]);
  const range = rangeOf("stampedLoftDeg", family);
  if (start === at && (!inSomeStamp || hit.value < range.min || hit.value > range.max)) return at;
  noteComma(pad, start, hit.next);
  wishStamp(pad, hit.value, start, hit.next);
  return hit.next;
}

export function finishPart(pad: Notepad, key: PartKey, next: number): number {
  if (key === "grip") {
    pad.last = "grip";
    pad.lastEnd = next;
  }
  return key === "headModel" ? stampAfter(pad, next) : next;
}
