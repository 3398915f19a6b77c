import { clubAt } from "../clubAt.ts";
import { playerNear, playersAt } from "../playerNames.ts";
import type { NamedPlayer } from "../reading.ts";
import { type CalcWords, calcWords, typedBetween } from "./calcWords.ts";
import { type ClubRef, type ClubRefHit, clubRefAt } from "./clubRefAt.ts";
import { fieldNames, nameAt } from "./fieldNames.ts";
import type { Fields } from "./fields.ts";
import { type CalcReading, readFields } from "./readFields.ts";

export interface CalcQuestion<F extends Fields> extends CalcReading<F> {
  /** The club of the record it is about, when one is named. */
  readonly club: ClubRef | null;
}

interface ClubFound extends ClubRefHit {
  readonly at: number;
}

const leads = new Set(["on", "for"]);

/** `on tol 7i`: whoever is meant, nobody is called so. */
function nobodyAt(source: CalcWords, at: number, players: readonly NamedPlayer[]): ClubRefHit | null {
  const club = leads.has(source.words[at - 1]?.text ?? "") ? clubAt(source.words, at + 1) : null;
  if (club === null || clubAt(source.words, at) !== null) return null;
  const word = source.words[at]?.text ?? "";
  const near = playerNear(word, players);
  const words = near.kind === "one" ? [near.player.name] : (near.kind === "several" ? near.players : near.nearest).map(({ name }) => name);
  return {
    ref: null,
    fault: { word: typedBetween(source, at, at + 1), accepted: { kind: "words", name: "player", words }, guess: null },
    next: club.next,
  };
}

/**
 * The club of the record a text names: anywhere when it is named in full, else what is wrong with the one meant, which stands
 * first where no field does, behind `on` or `for`, or begins with a player's name.
 */
function clubIn(source: CalcWords, fields: Fields, players: readonly NamedPlayer[]): ClubFound | null {
  const names = fieldNames(fields);
  const isPlace = (at: number): boolean => (at === 0 ? nameAt(source, 0, names) === null : leads.has(source.words[at - 1]?.text ?? ""));
  const hits = source.words.flatMap((_word, at): readonly ClubFound[] => {
    const isMeant = isPlace(at) || source.words[at]?.text === "order" || playersAt(source.words, at, players) !== null;
    const hit = isMeant ? (clubRefAt(source, at, players) ?? nobodyAt(source, at, players)) : null;
    return hit === null ? [] : [{ ...hit, at }];
  });
  return hits.find(({ ref }) => ref !== null) ?? hits[0] ?? null;
}

/** The word an `on` or `for` before a club begins at. */
const leadingTo = ({ words }: CalcWords, at: number): number => (leads.has(words[at - 1]?.text ?? "") ? at - 1 : at);

/**
 * Reads the text of a calculation: a club of the record where the view takes one (anywhere), and named values.
 *
 * @param text - as written
 * @param fields - what the view takes, by name
 * @param options - `players`: whose clubs may be named, left out when the view takes none; `otherParts`: as in `readFields`
 */
export function readCalc<F extends Fields>(
  text: string,
  fields: F,
  options: { readonly players?: readonly NamedPlayer[]; readonly otherParts?: boolean } = {},
): CalcQuestion<F> {
  const source = calcWords(text);
  const hit = options.players === undefined ? null : clubIn(source, fields, options.players);
  const words = hit === null ? source.words : [...source.words.slice(0, leadingTo(source, hit.at)), ...source.words.slice(hit.next)];
  const reading = readFields({ ...source, words }, fields, options);
  return { ...reading, club: hit?.ref ?? null, faults: hit?.fault == null ? reading.faults : [hit.fault, ...reading.faults] };
}
