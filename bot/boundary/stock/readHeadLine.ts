import type { Instant } from "../../../core/kinds.ts";
import { numberAt } from "../numberAt.ts";
import type { Word } from "../wordsOf.ts";
import { type HeadDraft, lineColumns } from "./headDraft.ts";
import { type Lexicon, modelAt, modelWanted } from "./lexicon.ts";
import { type StockLine, typedIn } from "./linesOf.ts";
import { placeAccepted, placeAt, placeNear } from "./placeAt.ts";
import type { StockFault } from "./stockKnown.ts";

type Value = "stampedLoftDeg" | "soledLoftDeg" | "designLieDeg" | "soledFaceDeg" | "bounceDeg" | "massG";

const valueWords: ReadonlyMap<string, Value> = new Map([
  ["stamped", "stampedLoftDeg"],
  ["stamp", "stampedLoftDeg"],
  ["loft", "soledLoftDeg"],
  ["lie", "designLieDeg"],
  ["face", "soledFaceDeg"],
  ["bounce", "bounceDeg"],
  ["mass", "massG"],
  ["weight", "massG"],
  ["weighs", "massG"],
]);
const handWords: ReadonlyMap<string, "left" | "right"> = new Map([
  ["right", "right"],
  ["rh", "right"],
  ["right-handed", "right"],
  ["left", "left"],
  ["lh", "left"],
  ["left-handed", "left"],
]);
/** What a face is multiplied by: square is 0 whatever stands there. */
const sides: ReadonlyMap<string, number> = new Map([
  ["open", 1],
  ["closed", -1],
  ["square", 0],
]);
const placeShape = /^(d-?\d+|drawer|bin|rack)$/;
const fillers = new Set(["hand", "handed", "to", "in", "into", "at", "g", "deg", "°", "model", "serial", "soled", "design"]);

interface HeadLine {
  readonly draft: HeadDraft;
  readonly faults: readonly StockFault[];
}

interface Read {
  draft: HeadDraft;
  at: number;
  readonly faults: StockFault[];
}

/** Reads one measured head: `head 4711 Cairn right stamped 9 loft 9.1 lie 58 face 0.3 open mass 197.2 D-7`, in any order behind the serial. */
export function readHeadLine(line: StockLine, lexicon: Lexicon, now: Instant): HeadLine {
  const { serial, next } = serialAt(line);
  const read: Read = { draft: { ...blank, row: line.row, serial, measuredAt: now }, at: next, faults: [] };
  while (read.at < line.words.length) takeNext(read, line, lexicon);
  return { draft: read.draft, faults: read.faults };
}

const blank: Omit<HeadDraft, "row" | "measuredAt"> = {
  serial: null,
  model: null,
  hand: null,
  stampedLoftDeg: null,
  soledLoftDeg: null,
  designLieDeg: null,
  soledFaceDeg: null,
  bounceDeg: null,
  massG: null,
  place: null,
};

/** The serial as typed, its words run together again. */
function serialAt(line: StockLine): { readonly serial: string | null; readonly next: number } {
  const from = line.words[1]?.text === "serial" ? 2 : 1;
  let next = from + 1;
  while (line.words[next]?.gap === "tight") next += 1;
  const typed = from < line.words.length ? typedIn(line, from, next) : "";
  return /^(?=.*\d)[A-Za-z0-9]{1,12}$/.test(typed) ? { serial: typed, next } : { serial: null, next: from };
}

function takeNext(read: Read, line: StockLine, lexicon: Lexicon): void {
  const { words } = line;
  const text = words[read.at]?.text ?? "";
  const value = valueWords.get(text);
  const hand = handWords.get(text);
  const placed = placeAt(words, read.at, lexicon.known.places);
  const [place, other] = placed?.places ?? [];
  if (value !== undefined) takeValue(read, line, value);
  else if (hand !== undefined && read.draft.hand === null) take(read, { hand }, read.at + 1);
  else if (placed !== null && place !== undefined && other === undefined && read.draft.place === null) take(read, { place }, placed.next);
  else if (fillers.has(text)) take(read, {}, read.at + 1);
  else takeModel(read, line, lexicon);
}

function take(read: Read, found: Partial<HeadDraft>, next: number): void {
  read.draft = { ...read.draft, ...found };
  read.at = next;
}

function refuse(read: Read, line: StockLine, next: number, fault: Pick<StockFault, "column" | "accepted"> & Partial<StockFault>): void {
  read.faults.push({ row: line.row, written: typedIn(line, read.at, next), guess: null, ...fault });
  read.at = next;
}

/** A number behind its word; a face is open, closed or square. */
function takeValue(read: Read, line: StockLine, value: Value): void {
  const { words } = line;
  const column = lineColumns[value];
  const leads = value === "soledFaceDeg" && sides.has(words[read.at + 1]?.text ?? "");
  const number = numberAt(words, read.at + (leads ? 2 : 1));
  const side = value === "soledFaceDeg" ? words[leads ? read.at + 1 : (number?.next ?? read.at + 1)]?.text : undefined;
  const factor = side === undefined ? undefined : sides.get(side);
  if (read.draft[value] !== null) refuse(read, line, number?.next ?? read.at + 1, { column, accepted: `${column} once` });
  else if (factor === 0) take(read, { [value]: 0 }, read.at + 2);
  else if (number === null) refuse(read, line, read.at + (isOther(words[read.at + 1]) ? 2 : 1), { column, accepted: `a number behind ${column}` });
  else take(read, { [value]: (factor ?? 1) * number.value }, factor !== undefined && !leads ? number.next + 1 : number.next);
}

/** A word that is not itself the next value: it stands where the number should. */
const isOther = (word: Word | undefined): boolean => word !== undefined && !valueWords.has(word.text);

function takeModel(read: Read, line: StockLine, { heads, known }: Lexicon): void {
  const hit = modelAt(line.words, read.at, heads);
  const text = line.words[read.at]?.text ?? "";
  const isOpen = read.draft.model === null;
  if (hit.kind === "one" && isOpen) take(read, { model: hit.model }, hit.next);
  else if (hit.kind === "several" && isOpen) refuse(read, line, hit.next, { column: "model", ...modelWanted(hit, "a head model on record") });
  else if (placeShape.test(text) && read.draft.place === null) {
    const { places } = known;
    refuse(read, line, line.words.length, { column: "place", accepted: placeAccepted(places), guess: placeNear(typedIn(line, read.at), places) });
  } else if (hit.kind === "none" && isOpen && /^\p{L}/u.test(text)) {
    refuse(read, line, read.at + 1, { column: "model", ...modelWanted(hit, "a head model on record") });
  } else refuse(read, line, read.at + 1, { column: "text", accepted: "a value with its word before it, such as lie 58" });
}
