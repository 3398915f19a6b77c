import { clubChoices } from "./askMissing.ts";
import { type Notepad, wordAt } from "./notepad.ts";
import { skipAll } from "./skipAll.ts";

const FULL_SET = "14";
const wholes = new Set(["full", "whole", "entire", "complete", "all", "lost", "missing"]);
const sets = new Set(["bag", "set", "clubs", FULL_SET]);
const places = new Set(["in", "into", "from", "of", "to", "for", "at"]);
const articles = ["the", "his", "her", "of"];

/** `bag`, `full bag`, `whole set`, `14 clubs`, `everything`: every club the player has on record. */
export function readWholeBag(pad: Notepad, at: number): number {
  if (pad.mode !== "order" || pad.clubs.length > 0 || pad.clubAsked) return at;
  const next = wholeBagAt(pad, at);
  if (next > at) {
    pad.sets.push({ set: "bag", choices: clubChoices, from: at, next });
    pad.clubAsked = true;
    pad.last = "club";
    pad.lastEnd = next;
  }
  return next;
}

function wholeBagAt(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (word === FULL_SET && wordAt(pad, at + 1) === "clubs") return at + 2;
  const set = wholes.has(word) ? skipAll(pad, at + 1, articles) : at;
  if (set > at && sets.has(wordAt(pad, set))) return wordAt(pad, set) === FULL_SET && wordAt(pad, set + 1) === "clubs" ? set + 2 : set + 1;
  const before = articles.includes(wordAt(pad, at - 1)) ? wordAt(pad, at - 2) : wordAt(pad, at - 1);
  const isNamed = word === "everything" || (word === "bag" && !places.has(before));
  return pad.kind !== null && isNamed ? at + 1 : at;
}
