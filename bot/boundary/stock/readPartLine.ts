import type { Word } from "../wordsOf.ts";
import { type Lexicon, modelAt, modelWanted, type NameHit, singular } from "./lexicon.ts";
import { type StockLine, typedIn } from "./linesOf.ts";
import { placeAccepted, placeAt, placeNear } from "./placeAt.ts";
import type { CountedKind, KnownPlace, PartQuantity, StockFault } from "./stockKnown.ts";

/** The largest number of one part that is taken as no slip. */
export const MOST_PARTS = 100_000;

type PartLine =
  | { readonly kind: "part"; readonly row: number; readonly value: PartQuantity }
  | { readonly kind: "faults"; readonly faults: readonly StockFault[] };

export const kindWords: ReadonlyMap<string, CountedKind> = new Map([
  ...(["shaft", "grip", "sleeve", "weight", "goods"] as const).flatMap((kind) => [[kind, kind] as const, [`${kind}s`, kind] as const]),
  ["screw", "weight"],
  ["screws", "weight"],
]);
const times = new Set(["x", "of", "pcs", "pieces", "pc"]);
const towards = new Set(["to", "in", "into", "at", "on", "from", "for"]);
const headsOneByOne = "heads one by one, such as head 4711 Cairn right stamped 9 loft 9.1 lie 58 face 0.3 open mass 197.2 D-7";
const quantityShape = /^([+-]?\d{1,9}(?:\.\d{1,9})?)x?$/;
const placeShape = /^(bin|bins|drawer|rack|main|float|d-?\d+)$/;

interface Read {
  kind: CountedKind | null;
  quantity: string | null;
  place: KnownPlace | null;
  at: number;
}

/** Where counted parts go, or are looked for, unless it is said: goods in the float, all else on the main rack. */
export const usualPlace = (kind: CountedKind, { known }: Lexicon): KnownPlace | null =>
  (kind === "goods" ? known.places.find((place) => place.kind === "float") : undefined) ??
  known.places.find((place) => place.kind === "mainRack") ??
  null;

/** Reads one part with its number and place: `12 x Dunlin 60 X to main rack`, `shaft Dunlin 60 X 4 bin Oxtoby`, `screw 4 g 10`. */
export function readPartLine(
  line: StockLine,
  lexicon: Lexicon,
  { min, place: givenPlace }: { readonly min: number; readonly place: KnownPlace | null },
): PartLine {
  const { row } = line;
  const read: Read = { kind: null, quantity: null, place: givenPlace, at: 0 };
  takeBeginning(read, line, lexicon);
  const models = read.kind === null ? lexicon.parts : lexicon.ofKind[read.kind];
  const words = singular(line.words, models);
  const hit = modelAt(words, read.at, models);
  const part = hit.kind === "one" ? hit.model : null;
  const misread = hit.kind === "one" ? takeEnd(read, words, line, lexicon, hit.next) : nameFault(read, hit, words, line, lexicon);
  const place = read.place ?? (part === null ? null : usualPlace(part.kind, lexicon));
  const quantity = wholeNumber(read.quantity, min);
  const isUnsaid = misread !== null && read.quantity === null;
  const faults: readonly StockFault[] = [
    ...(misread === null ? [] : [misread]),
    ...(quantity !== null || isUnsaid
      ? []
      : [{ row, column: "quantity", written: read.quantity, accepted: `a whole number from ${min} to ${MOST_PARTS}`, guess: null }]),
    ...(place !== null || misread !== null
      ? []
      : [{ row, column: "place", written: null, accepted: placeAccepted(lexicon.known.places), guess: null }]),
  ];
  return faults.length === 0 && part !== null && place !== null && quantity !== null
    ? { kind: "part", row, value: { part, place, quantity } }
    : { kind: "faults", faults };
}

/** Why no one model is named: a place that is none before it, or a name that is none or not clear. */
function nameFault(
  { at, place }: Read,
  hit: Exclude<NameHit<unknown>, { kind: "one" }>,
  words: readonly Word[],
  line: StockLine,
  { known, heads }: Lexicon,
): StockFault {
  const misplaced = place === null ? placeFault(line, at, known.places) : null;
  if (misplaced !== null) return misplaced;
  const end = hit.kind === "several" ? hit.next : endOfName(words, at);
  const { accepted, guess } = modelWanted(hit, "a model on record");
  const isHead = modelAt(words, at, heads).kind === "one";
  return {
    row: line.row,
    column: "model",
    written: at < words.length ? typedIn(line, at, end) : null,
    accepted: isHead ? `${accepted}; ${headsOneByOne}` : accepted,
    guess,
  };
}

/** @returns null when it is missing, no whole number, too small or too large */
function wholeNumber(written: string | null, min: number): number | null {
  const value = written === null ? Number.NaN : Number(written);
  return Number.isInteger(value) && value >= min && value <= MOST_PARTS ? value : null;
}

/** What may stand before the name, each once in any order: its kind, how many, where. */
function takeBeginning(read: Read, line: StockLine, lexicon: Lexicon): void {
  const { words } = line;
  for (let before = -1; before < read.at && words.length > read.at + 1; ) {
    before = read.at;
    const text = words[read.at]?.text ?? "";
    const kind = kindWords.get(text);
    const number = quantityShape.exec(text)?.[1];
    const placed = read.place === null ? placeAt(words, read.at, lexicon.known.places) : null;
    if (placed !== null && placed.places.length === 1) {
      read.place = placed.places[0] ?? null;
      read.at = placed.next;
    } else if (kind !== undefined && read.kind === null && !isName(words, read.at, kind, lexicon)) {
      read.kind = kind;
      read.at += 1;
    } else if (number !== undefined && read.quantity === null) {
      read.quantity = number;
      read.at += times.has(words[read.at + 1]?.text ?? "") ? 2 : 1;
    }
  }
}

/** `screw 4 g` is a name from its first word on, `sleeve Cairn driver` a kind and a name. */
function isName(words: readonly Word[], at: number, kind: CountedKind, { parts, ofKind }: Lexicon): boolean {
  return modelAt(words, at + 1, ofKind[kind]).kind !== "one" && modelAt(singular(words, parts), at, parts).kind === "one";
}

/** Words that begin like a place, and are none or several. */
function placeFault(line: StockLine, at: number, places: readonly KnownPlace[]): StockFault | null {
  const text = line.words[at]?.text ?? "";
  const meant = placeAt(line.words, at, places);
  if (meant === null && !placeShape.test(text)) return null;
  const written = typedIn(line, at, Math.min(line.words.length, meant?.next ?? at + (/\d/.test(text) ? 1 : 2)));
  const accepted = meant === null ? placeAccepted(places) : `one of ${meant.places.map(({ shown }) => shown).join(", ")}`;
  return { row: line.row, column: "place", written, accepted, guess: meant === null ? placeNear(written, places) : null };
}

function endOfName(words: readonly Word[], from: number): number {
  const end = words.findIndex((word, at) => at > from && (quantityShape.test(word.text) || towards.has(word.text) || placeShape.test(word.text)));
  return end === -1 ? words.length : end;
}

/** What may stand behind the name: how many, where. Anything else is a fault. */
function takeEnd(read: Read, words: readonly Word[], line: StockLine, { known }: Lexicon, from: number): StockFault | null {
  read.at = from;
  while (read.at < words.length) {
    const text = words[read.at]?.text ?? "";
    const number = quantityShape.exec(text)?.[1];
    const placed = placeAt(words, towards.has(text) ? read.at + 1 : read.at, known.places);
    const [place, other] = placed?.places ?? [];
    if (number !== undefined && read.quantity === null) {
      read.quantity = number;
      read.at += 1;
    } else if (times.has(text) && quantityShape.test(words[read.at + 1]?.text ?? "") && read.quantity === null) {
      read.at += 1;
    } else if (placed !== null && place !== undefined && other === undefined && read.place === null) {
      read.place = place;
      read.at = placed.next;
    } else return leftOver(read, line, known.places, placed?.places ?? []);
  }
  return null;
}

function leftOver({ at, place }: Read, line: StockLine, places: readonly KnownPlace[], meant: readonly KnownPlace[]): StockFault {
  const text = line.words[at]?.text ?? "";
  const from = towards.has(text) ? at + 1 : at;
  const written = typedIn(line, from < line.words.length ? from : at);
  const { row } = line;
  if (meant.length > 1) return { row, column: "place", written, accepted: `one of ${meant.map(({ shown }) => shown).join(", ")}`, guess: null };
  if (place === null && (towards.has(text) || placeShape.test(text))) {
    return { row, column: "place", written, accepted: placeAccepted(places), guess: placeNear(written, places) };
  }
  return { row, column: "text", written, accepted: "number, model and place only, such as 12 x Dunlin 60 X to main rack", guess: null };
}
