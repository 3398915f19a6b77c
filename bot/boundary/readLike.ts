import type { Like } from "../../core/buildSheet/buildRequest.ts";
import { editDistance, forgivenSlips } from "./editDistance.ts";
import { ask, asOptions, follows, mend, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { skipAll } from "./skipAll.ts";
import { isClauseWord } from "./vocabulary.ts";

/** `like gamer`, `same as his backup`, `from gamer`, `like order 57`. */
export function readLike(pad: Notepad, at: number): number {
  const start = likeStart(pad, at);
  if (start === null) return at;
  const named = skipAll(pad, start, ["the", "his", "her", "their", "current", "as"]);
  const word = wordAt(pad, named).replace(/'s$/, "");
  if (/^gamers?$/.test(word)) return takeLike(pad, { from: "gamer" }, at, named + 1);
  if (/^backups?$/.test(word)) return takeLike(pad, { from: "backup" }, at, named + 1);
  const numberAtWord = word === "order" ? named + 1 : named;
  const number = /^\d{1,7}$/.test(wordAt(pad, numberAtWord)) ? Number(wordAt(pad, numberAtWord)) : null;
  if (number !== null && wordAt(pad, at) !== "from" && wordAt(pad, at) !== "than")
    return takeLike(pad, { from: "order", number }, at, numberAtWord + 1);
  if (wordAt(pad, at) !== "like") return at;
  const meant = (["gamer", "backup"] as const).find((known) => editDistance(word, known, forgivenSlips(word.length)) !== null);
  if (meant !== undefined) {
    mend(pad, named, named + 1, meant, "misspelt");
    return takeLike(pad, { from: meant }, at, named + 1);
  }
  const next = follows(pad, named) && !isClauseWord(word) ? named + 1 : named;
  ask(
    pad,
    "value-unreadable",
    placeOf(pad, at, Math.max(next, at + 1)),
    "like gamer, like backup or like order 57",
    asOptions(["like gamer", "like backup"]),
  );
  return Math.max(next, at + 1);
}

function likeStart(pad: Notepad, at: number): number | null {
  const word = wordAt(pad, at);
  if (["like", "from", "than", "off", "copy"].includes(word)) return wordAt(pad, at + 1) === "of" ? at + 2 : at + 1;
  if (word === "as" && wordAt(pad, at - 2) === "same") return at + 1;
  if (word !== "same") return null;
  const next = wordAt(pad, at + 1);
  if (word === "same" && (next === "as" || next === "like")) return at + 2;
  return /^(gamer|backup)$/.test(next) ? at + 1 : null;
}

function takeLike(pad: Notepad, like: Like, at: number, next: number): number {
  if (pad.like !== null && JSON.stringify(pad.like) !== JSON.stringify(like)) ask(pad, "twice", placeOf(pad, at, next), "one club to be like");
  else pad.like = like;
  return next;
}
