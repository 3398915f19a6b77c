import { askUnread } from "./askUnread.ts";
import { type ClubPart, clubParts } from "./clubParts.ts";
import { foundAndLeft } from "./foundAndLeft.ts";
import { type Message, withoutGo } from "./message.ts";
import { namedPositions } from "./namedPositions.ts";
import { ask, newNotepad, placeOf } from "./notepad.ts";
import {
  type GaugedQuantity,
  gaugedQuantities,
  looks,
  type MeasuredValue,
  type Mending,
  type MessageReading,
  type Place,
  type Problem,
  type ReadingContext,
} from "./reading.ts";
import { readWords } from "./readWords.ts";
import { mendingsOf, problemsOf } from "./settle.ts";
import type { Word } from "./wordsOf.ts";

const ACCEPTED = "loft 9.2 face 0.4 swing d3 length 45 1/4 total 318 logo down";

interface PartReading {
  readonly values: readonly (MeasuredValue & { readonly place: Place })[];
  readonly problems: readonly Problem[];
  readonly mendings: readonly Mending[];
}

/** The technician's line: what gauge and eye say of each club, every value exact; anything else in it is asked. */
export function readMeasured(
  message: Message,
  context: ReadingContext,
  hit: { readonly number: number; readonly next: number },
): MessageReading | null {
  const { words } = withoutGo(message.words);
  const readings = clubParts(words.slice(hit.next), context).map((part) => readPart(message.text, context, part));
  const values = readings.flatMap((reading) => reading.values.map(({ place: _, ...value }) => value));
  if (!context.isOpenOrder(hit.number) && values.length === 0) return null;
  const problems = readings.flatMap((reading) => reading.problems);
  const mendings = readings.flatMap((reading) => reading.mendings);
  if (values.length === 0 && problems.length === 0) problems.push(nothingIn(message.text, words));
  if (problems.length > 0) return problemsOf({ problems, mendings }, null);
  return { kind: "measured", number: hit.number, values, mendings: mendingsOf({ mendings }) };
}

function nothingIn(text: string, words: readonly Word[]): Problem {
  const place = { from: words[0]?.from ?? 0, to: words.at(-1)?.to ?? 0 };
  return { code: "nothing-to-do", place, word: text.slice(place.from, place.to), accepted: ACCEPTED, options: [] };
}

function readPart(text: string, context: ReadingContext, part: ClubPart): PartReading {
  const { asFound, asLeft, found } = foundAndLeft(text, part.words);
  const left = readStage(text, context, part, asLeft, "left");
  if (found.length === 0) return left.values.length + left.problems.length > 0 ? left : { ...left, problems: nothingOf(text, part) };
  const covers = ({ place }: { readonly place: Place }): boolean => found.some(({ from, to }) => from < place.to && place.from < to);
  const before = readStage(text, context, part, asFound, "found");
  return {
    values: [...before.values.filter(covers), ...left.values],
    problems: [...before.problems.filter(covers), ...left.problems],
    mendings: [...before.mendings.filter(covers), ...left.mendings],
  };
}

const nothingOf = (text: string, part: ClubPart): readonly Problem[] => (part.name.length === 0 ? [] : [nothingIn(text, part.name)]);

function readStage(text: string, context: ReadingContext, part: ClubPart, words: readonly Word[], stage: MeasuredValue["stage"]): PartReading {
  const end = part.words.at(-1)?.to ?? 0;
  const pad = newNotepad(text.slice(0, end), namedPositions(words, part.club), context, { mode: "measured", kind: null, kindAt: null });
  if (part.club !== null) pad.clubs.push(part.club);
  readWords(pad, 0);
  const values = [...pad.wishes].flatMap(([key, { wish, place }]) => {
    const seen = seenIn(key, wish.value);
    if (seen === null) ask(pad, "value-unreadable", place, quantityOf(key) === null ? ACCEPTED : "the value as measured");
    return seen === null ? [] : [{ ...seen, club: part.club, copy: part.copy, stage, asWritten: wish.asWritten, place }];
  });
  if (pad.clubs.length > 1 || pad.sets.length > 0) ask(pad, "which-club", placeOf(pad, 0, pad.end), "one club at a time");
  askUnread(pad);
  return { values, problems: pad.problems, mendings: pad.mendings };
}

const quantityOf = (key: string): GaugedQuantity | null => gaugedQuantities.find((known) => known === key) ?? null;

/** A clause as something measured or seen; null for a change, a turn, and what no gauge or eye tells. */
function seenIn(key: string, value: unknown) {
  const quantity = quantityOf(key);
  const amount = typeof value === "object" && value !== null && "kind" in value ? value : null;
  if (quantity !== null) {
    return amount?.kind === "exactly" && "value" in amount && typeof amount.value === "number"
      ? { kind: "quantity" as const, quantity, value: amount.value }
      : null;
  }
  const look = looks.find((known) => known === key);
  const seen = amount?.kind === "mark" && "mark" in amount ? amount.mark : value;
  return look === undefined || typeof seen !== "string" ? null : { kind: "look" as const, look, seen };
}
