import { ask, asOptions, type Notepad, placeOf, typed, wordAt } from "./notepad.ts";

interface UnreadRun {
  readonly from: number;
  readonly next: number;
  readonly guess: string | null;
}

function runsOf(unread: Notepad["unread"]): readonly UnreadRun[] {
  const runs: UnreadRun[] = [];
  for (const { at, guess } of unread) {
    const last = runs.at(-1);
    if (last !== undefined && last.next === at && guess === null) runs[runs.length - 1] = { ...last, next: at + 1 };
    else runs.push({ from: at, next: at + 1, guess });
  }
  return runs;
}

const destinations = ["range", "locker", "caddie", "courier"];

const isAfterTo = (pad: Notepad, at: number): boolean =>
  wordAt(pad, at - 1) === "to" || (wordAt(pad, at - 1) === "the" && wordAt(pad, at - 2) === "to");

/** Words nobody could read, neighbours together, each a problem with the nearest trade word as a guess. */
export function askUnread(pad: Notepad): void {
  for (const { from, next, guess } of runsOf(pad.unread)) {
    if (isAfterTo(pad, from)) {
      ask(pad, "unknown-destination", placeOf(pad, from, next), destinations.join(", "), asOptions(destinations));
      continue;
    }
    const endsLine = wordAt(pad, next) === "" || pad.words[next]?.gap === "line";
    const note = endsLine ? [{ label: "note", replacement: `note ${typed(pad, from, next)}` }] : [];
    const word = wordAt(pad, from);
    const guesses = destinations.includes(word) ? [`to ${word}`] : guess === null ? [] : [guess];
    const options = [...asOptions(guesses), ...note];
    ask(pad, "unknown-word", placeOf(pad, from, next), "a clause such as loft, length, swing, shaft, grip or by; or note and the words", options);
  }
}
