import { ask, type Notepad, placeOf, wish, wordAt } from "./notepad.ts";

/** `note …` and `stamp …` take the rest of their line, as typed; a stamp seen on a club ends at a comma. */
export function readRestOfLine(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  if (word !== "note" && word !== "notes" && word !== "stamp") return at;
  return takeRestOfLine(pad, word === "stamp" ? "stamp" : "note", at, at + 1);
}

export function takeRestOfLine(pad: Notepad, what: "note" | "stamp", at: number, start: number): number {
  let next = start;
  const isSeen = pad.mode === "measured" && what === "stamp";
  while (next < pad.end && pad.words[next]?.gap !== "line" && !(isSeen && next > start && pad.words[next]?.gap === "comma")) next += 1;
  const from = pad.words[start]?.from;
  const lineEnd = pad.words[next]?.from ?? pad.text.length;
  const rest =
    from === undefined || next === start
      ? ""
      : (pad.text.slice(from, lineEnd).split(/[\n\r\u2028\u2029]/)[0] ?? "").replace(isSeen ? /[\s,;]+$/ : /\s+$/, "").trim();
  pad.restEnd = from === undefined ? 0 : from + rest.length;
  if (rest === "") ask(pad, "value-unreadable", placeOf(pad, at, at + 1), `${what} and the words`);
  else if (what === "note") pad.note = pad.note === null ? rest : `${pad.note}; ${rest}`;
  else {
    wish(pad, "stamp", rest, start, next);
    const noted = pad.wishes.get("stamp");
    if (noted !== undefined) pad.wishes.set("stamp", { ...noted, wish: { value: rest, asWritten: rest } });
  }
  return next;
}
