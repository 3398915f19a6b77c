import type { NamedPlayer } from "../reading.ts";
import { type CalcWords, calcWords } from "./calcWords.ts";
import { type ClubRef, clubRefAt } from "./clubRefAt.ts";
import { fieldNames, nameAt } from "./fieldNames.ts";
import type { Fields } from "./fields.ts";
import { type CalcReading, readFields } from "./readFields.ts";

export interface CalcQuestion<F extends Fields> extends CalcReading<F> {
  /** The club of the record it is about, when one is named. */
  readonly club: ClubRef | null;
}

/** Where a club may be named: first, when no field is, or behind the first `on` or `for`. */
function clubPlace(source: CalcWords, fields: Fields): number | null {
  const before = source.words.findIndex(({ text }) => text === "on" || text === "for");
  if (before >= 0) return before + 1;
  return nameAt(source, 0, fieldNames(fields)) === null ? 0 : null;
}

/**
 * Reads the text of a calculation: a club of the record where the view takes one (first, or behind `on`), and named values.
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
  const at = clubPlace(source, fields);
  const hit = at === null || options.players === undefined ? null : clubRefAt(source, at, options.players);
  const words = hit === null || at === null ? source.words : [...source.words.slice(0, Math.max(0, at - 1)), ...source.words.slice(hit.next)];
  const reading = readFields({ ...source, words }, fields, options);
  return { ...reading, club: hit?.ref ?? null, faults: hit?.fault == null ? reading.faults : [hit.fault, ...reading.faults] };
}
