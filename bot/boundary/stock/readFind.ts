import type { Hand } from "../../../core/kinds.ts";
import { foldText } from "../foldText.ts";
import { numberAt } from "../numberAt.ts";
import { partAt } from "../partAt.ts";
import type { Word } from "../wordsOf.ts";
import { askedClubAt } from "./askedClubAt.ts";
import { boundAt } from "./boundAt.ts";
import type { FindReading, HeadQuestion, Unread } from "./findQuestion.ts";
import { type Lexicon, lexiconOf, modelAt, type Named, singular } from "./lexicon.ts";
import { linesOf, type StockLine, typedIn } from "./linesOf.ts";
import { placeAt } from "./placeAt.ts";
import { kindWords } from "./readPartLine.ts";
import type { CountedKind, KnownPart, StockKnown } from "./stockKnown.ts";

const fillers = new Set(
  "any anything a an the head heads for have we got is are there which what with of and in do where whats please pls still left-over on us me our show find all at deg °".split(
    " ",
  ),
);
const hands: ReadonlyMap<string, Hand> = new Map([
  ["left", "left"],
  ["lh", "left"],
  ["lefty", "left"],
  ["left-hand", "left"],
  ["left-handed", "left"],
  ["right", "right"],
  ["rh", "right"],
  ["right-hand", "right"],
  ["right-handed", "right"],
]);
const handEnds = new Set(["hand", "handed", "hander"]);
const MOST_UNREAD = 8;
/** A longer text is no question. */
export const LONGEST_QUESTION = 500;

interface Read {
  head: HeadQuestion;
  parts: readonly KnownPart[];
  kind: CountedKind | null;
  /** What only a head can be asked by, as typed. */
  readonly ofHeads: string[];
  readonly unread: Unread[];
}

const anyHead: HeadQuestion = {
  models: null,
  family: null,
  club: null,
  hand: null,
  grind: null,
  stampedLoftDeg: null,
  serial: null,
  place: null,
  bounds: [],
};

/** Reads what is looked for: heads by what they measure, counted parts by name. What is not read is handed back. */
export function readFind(text: string, known: StockKnown): FindReading {
  const lexicon = lexiconOf(known);
  const read: Read = { head: anyHead, parts: [], kind: null, ofHeads: [], unread: [] };
  for (const line of linesOf(text)) for (let at = 0; at < line.words.length; ) at = takeAt(read, line, at, lexicon);
  const unread = read.unread.slice(0, MOST_UNREAD);
  const { head, kind, parts, ofHeads } = read;
  const isOfHeads = ofHeads.length > 0 || head.place?.kind === "drawer";
  if (parts.length > 0 || kind !== null || (!isOfHeads && head.place !== null)) {
    const models = parts.length > 0 ? parts : known.parts.filter((part) => kind === null || part.kind === kind);
    const others = ofHeads.filter((written) => foldText(written) !== "left").map((written) => ({ written, guess: null }));
    return { kind: "parts", question: { models, place: head.place }, unread: [...others, ...unread] };
  }
  return isOfHeads ? { kind: "heads", question: ofOneFamily(head, known), unread } : { kind: "nothing", unread };
}

/** `cairn 3w`: a name without its number is any of its models that make that club. */
function ofOneFamily(head: HeadQuestion, { headModels }: StockKnown): HeadQuestion {
  const family = head.club?.family ?? head.family;
  const { models } = head;
  if (family === null || models === null || models.some((model) => model.family === family)) return head;
  const brands = new Set(models.map(({ name }) => name.split(" ")[0]));
  const alike = headModels.filter((model) => model.family === family && brands.has(model.name.split(" ")[0]));
  return alike.length === 0 ? head : { ...head, models: alike };
}

/** Takes what begins at a word. @returns the word behind it */
function takeAt(read: Read, line: StockLine, at: number, lexicon: Lexicon): number {
  const { words } = line;
  const text = words[at]?.text ?? "";
  const ofHead = (found: Partial<HeadQuestion>, next: number): number => {
    read.head = { ...read.head, ...found };
    read.ofHeads.push(typedIn(line, at, next));
    return next;
  };
  const serial = lexicon.known.serials.find((known) => text.length > 2 && known.serial.toLowerCase() === text)?.serial;
  if (serial !== undefined) return ofHead({ serial }, at + 1);
  const bound = boundAt(words, at);
  if (bound !== null) return ofHead({ bounds: [...read.head.bounds, bound.bound] }, bound.next);
  const hand = hands.get(text);
  if (hand !== undefined) return ofHead({ hand }, handEnds.has(words[at + 1]?.text ?? "") ? at + 2 : at + 1);
  const named = takeName(read, line, at, lexicon);
  if (named !== null) return named.isHead ? ofHead({}, named.next) : named.next;
  const club = askedClubAt(words, at);
  if (club !== null) return ofHead(club.kind === "club" ? { club: club.club } : { family: club.family }, club.next);
  const grind = grindAt(words, at, lexicon);
  if (grind !== null) return ofHead({ grind: grind.grind }, grind.next);
  const stamp = stampAt(words, at);
  if (stamp !== null) return ofHead({ stampedLoftDeg: stamp.value }, stamp.next);
  const place = placeAt(words, at, lexicon.known.places);
  if (place !== null && place.places.length === 1) {
    read.head = { ...read.head, place: place.places[0] ?? null };
    return place.next;
  }
  return takeRest(read, line, at, lexicon);
}

/** `heel-relieved`, `heel relieved`. */
function grindAt(words: readonly Word[], at: number, { known }: Lexicon): { readonly grind: string; readonly next: number } | null {
  const grinds = new Set(known.headModels.flatMap(({ grind }) => grind ?? []));
  for (const grind of grinds) {
    const wanted = foldText(grind).split(/[\s-]+/);
    const typed = words.slice(at, at + wanted.length).map(({ text }) => text);
    if (typed[0] === wanted.join("-")) return { grind, next: at + 1 };
    if (typed.join(" ") === wanted.join(" ")) return { grind, next: at + wanted.length };
  }
  return null;
}

/** A number that stands alone is what is stamped on the head. */
function stampAt(words: readonly Word[], at: number): { readonly value: number; readonly next: number } | null {
  const isNamed = words[at]?.text === "stamped" || words[at]?.text === "stamp";
  const number = isNamed || /^[.\d]/.test(words[at]?.text ?? "") ? numberAt(words, isNamed ? at + 1 : at) : null;
  return number === null || number.signed ? null : { value: number.value, next: number.next };
}

/** A model's name: of a counted part when it is whole, else of a head, else of several parts. */
function takeName(read: Read, { words }: StockLine, at: number, lexicon: Lexicon): { readonly isHead: boolean; readonly next: number } | null {
  const kind = kindWords.get(words[at]?.text ?? "");
  const part = partsAt(words, at, kind === undefined && read.kind !== null ? lexicon.ofKind[read.kind] : lexicon.parts);
  const head = modelsAt(words, at, lexicon.heads);
  if (part !== null && (head === null || part.isWhole) && part.next >= (head?.next ?? 0)) {
    read.parts = [...new Set([...read.parts, ...part.models])];
    return { isHead: false, next: part.next };
  }
  if (head !== null) {
    read.head = { ...read.head, models: [...new Set([...(read.head.models ?? []), ...head.models])] };
    return { isHead: true, next: head.next };
  }
  if (kind === undefined) return null;
  read.kind = kind;
  return { isHead: false, next: at + 1 };
}

const partsAt = (words: readonly Word[], at: number, parts: Named<KnownPart>) => modelsAt(singular(words, parts), at, parts);

/** All models that a name, whole or begun, may mean; only words of the record count. */
function modelsAt<M extends { readonly name: string; readonly code: string | null }>(words: readonly Word[], at: number, models: Named<M>) {
  const hit = partAt(words, at, models.names, { byNumbers: true, mends: false });
  if (hit === null || hit.misspelt) return null;
  const typed = tokens(
    words
      .slice(at, hit.next)
      .map(({ text }) => text)
      .join(" "),
  );
  const holding = models.names.filter((name) => holds(tokens(name), typed));
  const whole = holding.filter((name) => tokens(name).length === typed.length);
  const names = whole.length > 0 ? whole : holding.length > 0 ? holding : hit.models;
  return { models: names.flatMap((name) => models.byName.get(name) ?? []), isWhole: whole.length > 0, next: hit.next };
}

const tokens = (name: string): readonly string[] => name.match(/\d+(?:\.\d+)?|[^\d\s-]+/g) ?? [];

/** Whether a name has all the words typed, each as often. */
function holds(name: readonly string[], typed: readonly string[]): boolean {
  const count = (list: readonly string[], word: string): number => list.filter((other) => other === word).length;
  return typed.every((word) => count(name, word) >= count(typed, word));
}

/** A word that says nothing, or one that is not read. */
function takeRest(read: Read, line: StockLine, at: number, lexicon: Lexicon): number {
  const text = line.words[at]?.text ?? "";
  if (fillers.has(text)) return at + 1;
  const near = [modelAt(line.words, at, lexicon.heads), modelAt(line.words, at, lexicon.parts)].find(({ kind }) => kind === "several");
  const next = near?.kind === "several" ? near.next : at + 1;
  read.unread.push({ written: typedIn(line, at, next), guess: near?.guesses?.[0] ?? null });
  return next;
}
