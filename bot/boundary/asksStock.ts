import { clubAt } from "./clubAt.ts";
import type { Message } from "./message.ts";
import { numberAt } from "./numberAt.ts";
import { type PartHit, partAt } from "./partAt.ts";
import { playersAt } from "./playerNames.ts";
import type { ReadingContext } from "./reading.ts";
import { recordPartAt } from "./recordPartAt.ts";
import type { Word } from "./wordsOf.ts";

const haves = new Set(["any", "anything", "have", "got", "left", "stock", "spare", "spares", "many"]);
const comparing = new Set(["under", "over", "above", "below"]);
const things = new Set(["heads", "shafts", "grips", "sleeves", "screws"]);
const about = new Set(
  `true loft squared stamped face lie bounce mass light heavy open closed left right hand handed left-handed right-handed left-hand right-hand lh rh lefty righty
   lefties`.split(/\s+/),
);
const plain = new Set(
  `we a an the in on of for with and or to than less more between do which what how is are there still around head shaft grip sleeve screw bin bins truck rack drawer home base here please pls
   round ribless rib no r s x stiff regular g gr grams deg degrees mm his her our`.split(/\s+/),
);
/** Openings that ask, with a mark behind them or without. */
const opensAsking = /^(have we|do we|any|which|what|how many|is there|are there) /;
const openingWords = 2;

interface Seen {
  parts: number;
  clubs: number;
  players: number;
  numbers: number;
  things: number;
  about: number;
  haves: number;
  /** `under 9`, `8.5 to 9`. */
  bounds: number;
}

/**
 * Whether a question is about what is in stock: `under 9 true, left hand?`, `have we got a dunlin 60 x?`. Every word must be one
 * of the stock's, so that chatter stays unanswered.
 */
export function asksStock({ words, asks }: Message, context: ReadingContext): boolean {
  const seen: Seen = { parts: 0, clubs: 0, players: 0, numbers: 0, things: 0, about: 0, haves: 0, bounds: 0 };
  for (let at = 0; at < words.length; ) {
    const next = take(words, at, context, seen);
    if (next === at) return false;
    at = next;
  }
  const isNamed = seen.parts > 0 || seen.things > 0;
  if (seen.players > 0 && !isNamed) return false;
  if (seen.bounds > 0 && asks) return isNamed || seen.clubs > 0 || seen.about > 0 || seen.haves > 0;
  const opening = `${words
    .slice(0, openingWords)
    .map(({ text }) => text)
    .join(" ")} `;
  return seen.haves > 0 && isNamed && (asks || (seen.parts > 0 && opensAsking.test(opening)));
}

function take(words: readonly Word[], at: number, context: ReadingContext, seen: Seen): number {
  const text = words[at]?.text ?? "";
  const part = partNamedAt(words, at, context);
  if (part !== null) return count(seen, "parts", part.next);
  const club = clubAt(words, at);
  if (club !== null) return count(seen, "clubs", club.next);
  if (comparing.has(text) || text === "than" || text === "between") {
    const bound = numberAt(words, at + 1);
    return bound === null ? at : count(seen, "bounds", bound.next);
  }
  const number = /^[\d.]/.test(text) ? numberAt(words, at) : null;
  if (number !== null) return takeRange(words, number.next, seen);
  for (const [kind, known] of [
    ["haves", haves],
    ["things", things],
    ["about", about],
  ] as const) {
    if (!known.has(text)) continue;
    if (kind === "haves" && about.has(text)) count(seen, "about", at);
    return count(seen, kind, at + 1);
  }
  const player = playersAt(words, at, context.players);
  if (player !== null) return count(seen, "players", player.next);
  return plain.has(text) ? at + 1 : at;
}

/** `8.5 to 9`. */
function takeRange(words: readonly Word[], next: number, seen: Seen): number {
  const upper = words[next]?.text === "to" ? numberAt(words, next + 1) : null;
  return upper === null ? count(seen, "numbers", next) : count(seen, "bounds", upper.next);
}

function count(seen: Seen, kind: keyof Seen, next: number): number {
  seen[kind] += 1;
  return next;
}

/** A part of the record by its name, misspelt or not. */
function partNamedAt(words: readonly Word[], at: number, context: ReadingContext): PartHit | null {
  const word = words[at]?.text ?? "";
  const lists = [context.headModels, context.shaftModels, context.gripModels, context.grinds];
  for (const names of lists) {
    const hit = recordPartAt(words, at, names, { ...context, byNumbers: names === context.shaftModels, mends: false });
    if (hit !== null && (names !== context.grinds || word.includes("-"))) return hit;
  }
  const isLikely = /^[a-z]{5,}$/.test(word);
  const near = isLikely ? lists.slice(0, 3).map((names) => partAt(words, at, names, { byNumbers: false, mends: true })) : [];
  return near.find((hit) => hit?.misspelt === true && hit.next > at + 1) ?? null;
}
