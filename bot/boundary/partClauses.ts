import type { Clauses } from "../../core/buildSheet/buildRequest.ts";
import { clubFamily } from "../../core/kinds.ts";
import { noteComma } from "./amountClauses.ts";
import { ask, asOptions, follows, lean, mend, type Notepad, placeOf, typed, wish, wishAmount, wishStamp, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { nearestParts, type PartHit, partAt } from "./partAt.ts";
import { rangeOf } from "./quantityRanges.ts";
import { sleeveMarkAt } from "./sleeveMarkAt.ts";
import { isClauseWord } from "./vocabulary.ts";

type PartKey = "headModel" | "shaft" | "grip" | "grind";
const skipped = new Set(["is", "to", "the", "a", "with", "in", "as", "his", "her", "of"]);
const keptWords = new Set(["same", "stays", "gamer"]);

const namesOf = (pad: Notepad, key: PartKey): readonly string[] => {
  if (key === "headModel") return pad.context.headModels;
  if (key === "shaft") return pad.context.shaftModels;
  return key === "grip" ? pad.context.gripModels : pad.context.grinds;
};

/** Writes the model down when one is clear, else asks which. */
function takePart(pad: Notepad, key: PartKey, at: number, found: PartHit): number {
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

/** A part's name standing alone: `dunlin 60 x`, `60x`, `gorse std round`, `cairn 9`. */
export function readBarePart(pad: Notepad, at: number): number {
  const grind = readBareGrind(pad, at);
  if (grind > at) return grind;
  const keys: readonly PartKey[] = ["headModel", "shaft", "grip"];
  for (const mends of [false, true]) {
    const word = wordAt(pad, at);
    if (mends && (word.length < 5 || !/^[a-z]+$/.test(word) || isClauseWord(word) || pad.nearLooks <= 0)) return at;
    for (const key of keys) {
      if (mends && !startsLikeBrand(word, namesOf(pad, key))) continue;
      if (mends) pad.nearLooks -= 1;
      const hit = partAt(pad.words, at, namesOf(pad, key), { byNumbers: key === "shaft", mends });
      if (hit === null || (mends && !hit.misspelt && hit.next === at + 1)) continue;
      const next = takePart(pad, key, at, hit);
      return finishPart(pad, key, next);
    }
  }
  return at;
}

/** `full grind`; alone only where sole work is the job, or in a name of two words. */
function readBareGrind(pad: Notepad, at: number): number {
  const hit = partAt(pad.words, at, pad.context.grinds, { byNumbers: false, mends: false });
  if (hit === null || hit.models.length !== 1) return at;
  const named = /^(grind|sole)$/.test(wordAt(pad, hit.next)) && follows(pad, hit.next);
  const isClear = named || pad.kind === "grind" || hit.next > at + 1 || wordAt(pad, at).includes("-");
  if (!isClear) return at;
  takePart(pad, "grind", at, hit);
  return named ? hit.next + 1 : hit.next;
}

const startsLikeBrand = (word: string, names: readonly string[]): boolean => names.some((name) => name.toLowerCase().startsWith(word.slice(0, 2)));

function finishPart(pad: Notepad, key: PartKey, next: number): number {
  if (key === "grip") {
    pad.last = "grip";
    pad.lastEnd = next;
  }
  return key === "headModel" ? stampAfter(pad, next) : next;
}

/** `shaft …`, `grip …`, `head …`, `grind …`. */
export function readNamedPart(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (word === "stamped") return readStamped(pad, at);
  const key = ({ head: "headModel", hd: "headModel", shaft: "shaft", shft: "shaft", grip: "grip", grp: "grip", grind: "grind" } as const)[word];
  if (key === undefined) return at;
  let start = at + 1;
  while (start < at + 3 && (skipped.has(wordAt(pad, start)) || wordAt(pad, start) === word)) start += 1;
  if (keptWords.has(wordAt(pad, start))) {
    lean(pad, at, start + 1);
    return start + 1;
  }
  if (key === "headModel") {
    const numbered = readHeadNumber(pad, at, start);
    if (numbered !== at) return numbered;
  }
  if (key === "shaft" && /^(up|down)$/.test(wordAt(pad, start))) return at;
  const hit = partAt(pad.words, start, namesOf(pad, key), { byNumbers: key === "shaft", mends: true });
  if (hit === null) return unknownPart(pad, key, at, start);
  return finishPart(pad, key, takePart(pad, key, start, hit));
}

function readStamped(pad: Notepad, at: number): number {
  const hit = numberAt(pad.words, at + 1);
  if (hit === null) {
    ask(pad, "value-unreadable", placeOf(pad, at, at + 1), "stamped 9");
    return at + 1;
  }
  noteComma(pad, at + 1, hit.next);
  wishStamp(pad, hit.value, at + 1, hit.next);
  return hit.next;
}

/** `head 9` is a stamp, `head 198g` a mass. */
function readHeadNumber(pad: Notepad, at: number, start: number): number {
  const hit = numberAt(pad.words, start);
  if (hit === null) return at;
  noteComma(pad, start, hit.next);
  if (hit.unit === "g" || hit.value >= 100) {
    const amount = hit.signed ? ({ kind: "by", value: hit.value } as const) : ({ kind: "exactly", value: hit.value } as const);
    wishAmount(pad, "headMassG", start, { amount, perUnit: 1, numberFrom: start, numberEnd: hit.numberEnd, next: hit.next });
  } else wishStamp(pad, hit.value, start, hit.next);
  return hit.next;
}

function unknownPart(pad: Notepad, key: PartKey, at: number, start: number): number {
  let next = start;
  while (
    next < start + 4 &&
    (next === start || follows(pad, next)) &&
    pad.words[next] !== undefined &&
    !isClauseWord(wordAt(pad, next)) &&
    wordAt(pad, next) !== "go"
  )
    next += 1;
  const nearest = nearestParts(wordAt(pad, start), namesOf(pad, key));
  const from = next === start ? at : start;
  ask(pad, "unknown-part", placeOf(pad, from, Math.max(next, from + 1)), nearest.join(", "), asOptions(nearest));
  return Math.max(next, at + 1);
}

/** `flex x` after a shaft's name is read with it; alone it is asked which shaft. */
export function readFlex(pad: Notepad, at: number): number {
  if (wordAt(pad, at) !== "flex") return at;
  const flex = wordAt(pad, at + 1);
  const fitting = pad.context.shaftModels.filter((name) => name.toLowerCase().endsWith(` ${flex}`)).slice(0, 5);
  if (pad.wishes.has("shaft") && fitting.includes(String(pad.wishes.get("shaft")?.wish.value))) return at + 2;
  ask(pad, "which-part", placeOf(pad, at, at + 2), "a shaft with its weight and flex", asOptions(fitting.map((name) => `shaft ${name}`)));
  return Math.min(at + 2, pad.end);
}

/** `sleeve std`, `std`, `strong 1`, `weak half`. */
export function readSleeve(pad: Notepad, at: number): number {
  const named = wordAt(pad, at) === "sleeve";
  let start = named ? at + 1 : at;
  while (named && start < at + 3 && ["to", "at", "on", "is"].includes(wordAt(pad, start))) start += 1;
  const hit = sleeveMarkAt(pad.words, start, pad.context.sleeveMarks, { named, turning: pad.kind === "turn" });
  if (hit === null) return named ? unreadSleeve(pad, at, start) : at;
  const [only] = hit.marks;
  if (hit.marks.length === 1 && only !== undefined) wish(pad, "sleeve", { kind: "mark", mark: only }, start, hit.next);
  else {
    const marks = hit.marks.length === 0 ? pad.context.sleeveMarks : hit.marks;
    ask(pad, "which-mark", placeOf(pad, start, hit.next), marks.join(", "), asOptions(marks.slice(0, 8).map((mark) => `sleeve ${mark}`)));
  }
  return hit.next;
}

function unreadSleeve(pad: Notepad, at: number, start: number): number {
  const hit = numberAt(pad.words, start);
  const up = wordAt(pad, start) === "up" || wordAt(pad, start) === "down";
  if (up || (hit !== null && /^(up|down)$/.test(wordAt(pad, hit.next)))) return start;
  const next = follows(pad, start) && !isClauseWord(wordAt(pad, start)) ? start + 1 : start;
  const marks = pad.context.sleeveMarks;
  ask(pad, "which-mark", placeOf(pad, at, next), marks.join(", "), asOptions(marks.slice(0, 8).map((mark) => `sleeve ${mark}`)));
  return next;
}

const freeClauses = ["spine", "ferrule", "screw", "melt", "lead", "neck", "line"] as const satisfies readonly (keyof Clauses)[];

/** `logo down`, `rib none`, `no rib`, `round`, and clauses in free words up to a comma, a line's end or the next trade word. */
export function readSmallClause(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  const following = wordAt(pad, at + 1);
  if (word === "logo" || word === "graphics") return readLogo(pad, at);
  if (word === "round" || word === "ribless" || ((word === "no" || word === "without") && following === "rib")) {
    const next = following === "rib" ? at + 2 : at + 1;
    wish(pad, "rib", "none", at, next);
    return next;
  }
  if (word === "rib" || word === "ribbed") {
    const says = ["none", "no", "off", "without"].includes(following) ? "none" : "rib";
    const next = says === "none" || ["yes", "on", "rib"].includes(following) ? at + 2 : at + 1;
    wish(pad, "rib", says, at, next);
    return next;
  }
  const key = freeClauses.find((name) => name === word);
  return key === undefined ? at : readFree(pad, key, at);
}

function readLogo(pad: Notepad, at: number): number {
  const side = wordAt(pad, at + 1);
  if (side !== "up" && side !== "down") {
    ask(pad, "value-unreadable", placeOf(pad, at, at + 1), "logo up or logo down", asOptions(["logo down", "logo up"]));
    return at + 1;
  }
  wish(pad, "logo", side, at + 1, at + 2);
  return at + 2;
}

function readFree(pad: Notepad, key: (typeof freeClauses)[number], at: number): number {
  let next = at + 1;
  while (next < pad.end && follows(pad, next) && !isClauseWord(wordAt(pad, next)) && wordAt(pad, next) !== "asap") next += 1;
  if (next === at + 1) {
    ask(pad, "value-unreadable", placeOf(pad, at, next), `${key} and what is wanted`);
    return next;
  }
  wish(pad, key, typed(pad, at + 1, next), at + 1, next);
  return next;
}
