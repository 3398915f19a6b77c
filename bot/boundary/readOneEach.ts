import { ask, asOptions, type Notepad, placeOf, typed, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { skipAll } from "./skipAll.ts";

/** `2 drivers one 9 one 10.5`: alike in all but one thing is an order each, so it is asked. */
export function readOneEach(pad: Notepad, at: number): number {
  if (pad.count === 1 || wordAt(pad, at) !== "one") return at;
  const first = numberAt(pad.words, at + 1);
  if (first === null) return at;
  const second = skipAll(pad, first.next, ["and", "n", "the"]);
  const number = ["one", "other"].includes(wordAt(pad, second)) ? numberAt(pad.words, second + 1) : null;
  if (number === null) return at;
  const heads = [typed(pad, at + 1, first.next), typed(pad, second + 1, number.next)].map((written) => `head ${written}`);
  ask(pad, "which-meaning", placeOf(pad, at, number.next), "several alike: an order for each that differs", asOptions(heads));
  return number.next;
}
