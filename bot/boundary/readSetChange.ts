import { ask, type Notepad, placeOf } from "./notepad.ts";
import { exchangeAt, type SetChange, setChangeAt } from "./setChangeAt.ts";

/** `out 4i in 7w`: which clubs leave the bag for those that are built; with another kind of work it is asked what is meant. */
export function readSetChange(pad: Notepad, at: number): number {
  if (pad.mode !== "order") return at;
  const change = setChangeAt(pad.words, at) ?? (pad.kind === "swap" ? exchangeAt(pad.words, at) : null);
  if (change === null) return at;
  const isBothWays = change.in.length > 0;
  if (pad.kind !== null && pad.kind !== "build") return isBothWays || pad.kind !== "swap" ? askWhichWork(pad, at, change) : at;
  pad.clubs.push(...change.in.filter((club) => !pad.clubs.includes(club)));
  pad.out.push(...change.out.filter((club) => !pad.out.includes(club)));
  pad.last = isBothWays ? "club" : "clause";
  pad.lastEnd = change.next;
  const twice = pad.out.filter((club) => pad.clubs.includes(club));
  if (twice.length > 0) ask(pad, "twice", placeOf(pad, at, change.next), `${twice.join(", ")} out or in, not both`);
  return change.next;
}

/** `swap toll 4i for 7w`: another head on the 4i, or a 7w built in its place. */
function askWhichWork(pad: Notepad, at: number, change: SetChange): number {
  pad.clubAsked = true;
  const kindAt = pad.kindAt ?? at;
  const place = placeOf(pad, kindAt, change.next);
  const between = pad.text.slice(pad.words[kindAt]?.to ?? place.from, pad.words[at]?.from ?? place.from);
  const written = [`out ${change.out.join(" ")}`, ...(change.in.length === 0 ? [] : [`in ${change.in.join(" ")}`])].join(" ");
  const works = `${pad.kind ?? ""}${between}${(pad.kind === "swap" ? change.out : change.in).join(" ")}`.trim();
  const options = [
    { label: written, replacement: `build${between}${written}` },
    { label: works, replacement: works },
  ];
  ask(pad, "which-meaning", place, "a set change, or work on one club", options);
  return change.next;
}
