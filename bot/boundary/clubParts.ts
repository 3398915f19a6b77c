import { type ClubName, clubFamily } from "../../core/kinds.ts";
import { clubAt } from "./clubAt.ts";
import { numberAt } from "./numberAt.ts";
import { partAt } from "./partAt.ts";
import { rangeOf } from "./quantityRanges.ts";
import type { ReadingContext } from "./reading.ts";
import { isSwingWord } from "./swingWeightAt.ts";
import { quantityOfWord } from "./vocabulary.ts";
import type { Word } from "./wordsOf.ts";

/** The words of a technician's line that are about one club. */
export interface ClubPart {
  readonly club: ClubName | null;
  readonly copy: number | null;
  /** The club's own words, empty when none is named. */
  readonly name: readonly Word[];
  readonly words: readonly Word[];
}

interface Named {
  readonly club: ClubName | null;
  readonly copy: number | null;
  readonly next: number;
}

const MOST_ALIKE = 8;
const ordinals = ["1st", "2nd", "3rd", "4th", "5th", "6th", "7th", "8th"];
const spelledOrdinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];
const counters = new Set(["copy", "no", "nr", "number"]);

/** Parts a technician's line where it names another club: `7i loft 34, 8i loft 38`, `driver 2 loft 9.3`, `2nd driver …`. */
export function clubParts(words: readonly Word[], context: ReadingContext): readonly ClubPart[] {
  const parts: ClubPart[] = [];
  let named: Named = { club: null, copy: null, next: 0 };
  let nameFrom = 0;
  const close = (end: number): void => {
    if (end > nameFrom) parts.push({ ...named, name: words.slice(nameFrom, named.next), words: words.slice(named.next, end) });
  };
  let at = 0;
  while (at < words.length) {
    const hit = nameAt(words, at, named.club);
    if (hit !== null) {
      close(at);
      named = hit;
      nameFrom = at;
    }
    at = hit?.next ?? behindName(words, at, context);
  }
  close(words.length);
  return parts;
}

function nameAt(words: readonly Word[], at: number, before: ClubName | null): Named | null {
  const led = ledCopyAt(words, at);
  const clubAtWord = led?.next ?? at;
  const hit = isSwingWord(words, clubAtWord) ? null : clubAt(words, clubAtWord);
  const club = hit?.kind === "clubs" && hit.clubs.length === 1 ? (hit.clubs[0] ?? null) : null;
  if (hit === null || club === null) return led === null ? null : { club: before, ...led };
  return led === null ? { club, ...copyBehind(words, hit.next, club) } : { club, copy: led.copy, next: hit.next };
}

/** `2nd`, `second one`, `copy 2`. */
function ledCopyAt(words: readonly Word[], at: number): { readonly copy: number; readonly next: number } | null {
  const text = words[at]?.text ?? "";
  const ordinal = Math.max(ordinals.indexOf(text), spelledOrdinals.indexOf(text)) + 1;
  if (ordinal > 0) return { copy: ordinal, next: words[at + 1]?.text === "one" ? at + 2 : at + 1 };
  const copy = text === "copy" ? countAt(words, at + 1) : null;
  return copy === null ? null : { copy, next: at + 2 };
}

function countAt(words: readonly Word[], at: number): number | null {
  const text = words[at]?.text ?? "";
  return /^\d$/.test(text) && Number(text) >= 1 && Number(text) <= MOST_ALIKE ? Number(text) : null;
}

/** `driver 2`, `driver no 2`: a small number behind the club that cannot be its loft. */
function copyBehind(words: readonly Word[], at: number, club: ClubName): { readonly copy: number | null; readonly next: number } {
  if (counters.has(words[at]?.text ?? "")) {
    const counted = countAt(words, at + 1);
    if (counted !== null) return { copy: counted, next: at + 2 };
  }
  const copy = words[at]?.gap === "comma" || words[at]?.gap === "line" ? null : countAt(words, at);
  if (copy === null || numberAt(words, at)?.next !== at + 1) return { copy: null, next: at };
  const lofts = rangeOf("squaredLoftDeg", clubFamily(club));
  const isLoft = copy >= lofts.min && copy <= lofts.max && quantityOfWord(words[at + 1]?.text ?? "") !== "squaredLoftDeg";
  return isLoft ? { copy: null, next: at } : { copy, next: at + 1 };
}

/** Behind words in which a club's name names no club: a stamp's text, a note, a part's name. */
function behindName(words: readonly Word[], at: number, context: ReadingContext): number {
  const text = words[at]?.text ?? "";
  if (text === "stamp" || text === "note" || text === "notes") {
    let next = at + 1;
    const ends = (gap: Word["gap"] | undefined): boolean => gap === "line" || (text === "stamp" && gap === "comma");
    while (next < words.length && (next === at + 1 || !ends(words[next]?.gap))) next += 1;
    return next;
  }
  const names = text === "shaft" ? context.shaftModels : text === "grip" ? context.gripModels : null;
  const hit = names === null ? null : partAt(words, at + 1, names, { byNumbers: text === "shaft", mends: false });
  return hit?.next ?? at + 1;
}
