import { ask, asOptions, follows, type Notepad, placeOf, wish, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { sleeveMarkAt } from "./sleeveMarkAt.ts";
import { isClauseWord } from "./vocabulary.ts";

/** `sleeve std`, `std`, `strong 1`, `weak half`. */
export function readSleeve(pad: Notepad, at: number): number {
  const named = wordAt(pad, at) === "sleeve";
  let start = named ? at + 1 : at;
  while (named && start < at + 3 && ["to", "at", "on", "is", "sleeve"].includes(wordAt(pad, start))) start += 1;
  const hit = sleeveMarkAt(pad.words, start, pad.context.sleeveMarks, { named, turning: pad.kind === "turn" });
  if (hit === null) return named ? unreadSleeve(pad, at, start) : at;
  const [only] = hit.marks;
  if (hit.marks.length === 1 && only !== undefined) wish(pad, "sleeve", { kind: "mark", mark: only }, start, hit.next);
  else {
    const marks = hit.marks.length === 0 ? pad.context.sleeveMarks : hit.marks;
    ask(pad, "which-mark", placeOf(pad, start, hit.next), marks.join(", "), asOptions(marks.slice(0, 8).map((mark) => `sleeve ${mark}`)));
  }
  return hit.next;
}

function unreadSleeve(pad: Notepad, at: number, start: number): number {
  const hit = numberAt(pad.words, start);
  const up = wordAt(pad, start) === "up" || wordAt(pad, start) === "down";
  if (up || (hit !== null && /^(up|down)$/.test(wordAt(pad, hit.next)))) return start;
  const next = follows(pad, start) && !isClauseWord(wordAt(pad, start)) ? start + 1 : start;
  const marks = pad.context.sleeveMarks;
  ask(pad, "which-mark", placeOf(pad, at, next), marks.join(", "), asOptions(marks.slice(0, 8).map((mark) => `sleeve ${mark}`)));
  return next;
}
