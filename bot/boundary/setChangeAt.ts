import type { ClubName } from "../../core/kinds.ts";
import { clubAt } from "./clubAt.ts";
import { isSwingWord } from "./swingWeightAt.ts";
import type { Word } from "./wordsOf.ts";

/** Clubs that leave a bag and clubs that come in. */
export interface SetChange {
  readonly out: readonly ClubName[];
  readonly in: readonly ClubName[];
  readonly next: number;
}

type Side = "out" | "in";
interface ClubList {
  readonly clubs: readonly ClubName[];
  /** How many stand behind the last comma; one when there is none. */
  readonly behindComma: number;
  readonly next: number;
}
interface Item {
  readonly side: Side;
  readonly clubs: readonly ClubName[];
  readonly next: number;
  /** The clubs of the other side that a marker behind the list took: `out 4i, 7w in`. */
  readonly others: readonly ClubName[];
}

const MOST_CLUBS = 14;
const MOST_ITEMS = 4;
const MOST_LINKS = 3;
const articles = new Set(["the", "his", "her", "a", "new"]);
const joints = new Set(["and", "n", "the", "his", "her", "a"]);
const links = new Set(["and", "n", "then", "put", "take", "bring", "with", "goes", "go", "going", "comes", "come"]);
const other: Readonly<Record<Side, Side>> = { out: "in", in: "out" };

function skip(words: readonly Word[], at: number, skipped: ReadonlySet<string>): number {
  let next = at;
  while (next < at + MOST_LINKS && skipped.has(words[next]?.text ?? "")) next += 1;
  return next;
}

const sideAt = (words: readonly Word[], at: number): Side | null => {
  const text = words[at]?.text;
  return text === "out" || text === "in" ? text : null;
};

function listAt(words: readonly Word[], at: number): ClubList | null {
  const clubs: ClubName[] = [];
  let next = at;
  let behindComma = 1;
  while (clubs.length < MOST_CLUBS) {
    const start = skip(words, next, clubs.length === 0 ? articles : joints);
    const hit = isSwingWord(words, start) ? null : clubAt(words, start);
    if (hit?.kind !== "clubs") break;
    const isParted = words[next]?.gap === "comma" || words[next]?.gap === "line";
    behindComma = isParted ? hit.clubs.length : behindComma;
    clubs.push(...hit.clubs);
    next = hit.next;
  }
  return clubs.length === 0 ? null : { clubs, behindComma, next };
}

/** `out 4i`, `in the 7w`, or the other way round: `4i out`. */
function itemAt(words: readonly Word[], at: number): Item | null {
  const led = sideAt(words, at);
  if (led !== null) {
    const list = listAt(words, at + 1);
    if (list === null) return null;
    const trailing = skip(words, list.next, links);
    const isTaken = list.clubs.length > 1 && sideAt(words, trailing) === other[led] && listAt(words, trailing + 1) === null;
    if (!isTaken) return { side: led, clubs: list.clubs, others: [], next: list.next };
    const kept = list.clubs.length - list.behindComma;
    return { side: led, clubs: list.clubs.slice(0, kept), others: list.clubs.slice(kept), next: trailing + 1 };
  }
  const list = listAt(words, at);
  const marker = list === null ? at : skip(words, list.next, links);
  const side = list === null ? null : sideAt(words, marker);
  if (list === null || side === null) return null;
  const following = listAt(words, marker + 1);
  const belongsBehind = following !== null && sideAt(words, skip(words, following.next, links)) === null;
  return belongsBehind ? null : { side, clubs: list.clubs, others: [], next: marker + 1 };
}

/**
 * Reads a set change that begins at a word: `out 3i 4i in 4h 7w`, `4i out 7w in`, `7w in for the 4i`; clubs that only go
 * out count too, as those that come in may stand elsewhere.
 */
export function setChangeAt(words: readonly Word[], at: number): SetChange | null {
  const clubs: Record<Side, ClubName[]> = { out: [], in: [] };
  let next = at;
  let last: Side | null = null;
  for (let count = 0; count < MOST_ITEMS; count += 1) {
    const start = count === 0 ? at : skip(words, next, links);
    const instead: ClubList | null = last !== null && words[start]?.text === "for" ? listAt(words, start + 1) : null;
    const item: Item | null = last !== null && instead !== null ? { ...instead, side: other[last], others: [] } : itemAt(words, start);
    if (item === null) break;
    clubs[item.side].push(...item.clubs);
    clubs[other[item.side]].push(...item.others);
    last = item.side;
    next = item.next;
  }
  return clubs.out.length === 0 ? null : { ...clubs, next };
}

/** `4i for 7w`, as a head's swap and a set change are both written. */
export function exchangeAt(words: readonly Word[], at: number): SetChange | null {
  const out = listAt(words, at);
  const word = out === null ? "" : (words[out.next]?.text ?? "");
  const coming = out !== null && (word === "for" || word === "with") ? listAt(words, out.next + 1) : null;
  return out === null || coming === null ? null : { out: out.clubs, in: coming.clubs, next: coming.next };
}
