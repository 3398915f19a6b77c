import { clubAt } from "./clubAt.ts";
import { type Notepad, wordAt } from "./notepad.ts";
import { skipAll } from "./skipAll.ts";

const MOST_CLUBS = 14;
const excepts = new Set(["no", "not", "except", "without", "minus", "bar", "but"]);

/** `bag except the putter`, `irons, no pw`: clubs left out of a set. */
export function readExcept(pad: Notepad, at: number): number {
  if (pad.sets.length === 0 || !excepts.has(wordAt(pad, at))) return at;
  let next = at;
  for (let count = 0; count < MOST_CLUBS; count += 1) {
    const hit = clubAt(pad.words, skipAll(pad, count === 0 ? at + 1 : next, ["and", "n", "or", "for", "not", "the", "his", "her"]));
    if (hit?.kind !== "clubs") break;
    pad.except.push(...hit.clubs);
    next = hit.next;
  }
  return next;
}
