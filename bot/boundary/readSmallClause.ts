import type { Clauses } from "../../core/buildSheet/buildRequest.ts";
import { ask, asOptions, follows, type Notepad, placeOf, typed, wish, wordAt } from "./notepad.ts";
import { isClauseWord } from "./vocabulary.ts";

const freeClauses = ["spine", "ferrule", "screw", "melt", "lead", "neck", "line"] as const satisfies readonly (keyof Clauses)[];

/** `logo down`, `rib none`, `no rib`, `round`, and clauses in free words up to a comma, a line's end or the next trade word. */
export function readSmallClause(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  const following = wordAt(pad, at + 1);
  if (word === "logo" || word === "graphics") return readLogo(pad, at);
  if (word === "round" || word === "ribless" || ((word === "no" || word === "without") && following === "rib")) {
    const next = following === "rib" ? at + 2 : at + 1;
    wish(pad, "rib", "none", at, next);
    return next;
  }
  if (word === "rib" || word === "ribbed") {
    const says = ["none", "no", "off", "without"].includes(following) ? "none" : "rib";
    const next = says === "none" || ["yes", "on", "rib"].includes(following) ? at + 2 : at + 1;
    wish(pad, "rib", says, at, next);
    return next;
  }
  const key = freeClauses.find((name) => name === word);
  return key === undefined ? at : readFree(pad, key, at);
}

function readLogo(pad: Notepad, at: number): number {
  const side = wordAt(pad, at + 1);
  if (side !== "up" && side !== "down") {
    ask(pad, "value-unreadable", placeOf(pad, at, at + 1), "logo up or logo down", asOptions(["logo down", "logo up"]));
    return at + 1;
  }
  wish(pad, "logo", side, at + 1, at + 2);
  return at + 2;
}

function readFree(pad: Notepad, key: (typeof freeClauses)[number], at: number): number {
  let next = at + 1;
  while (next < pad.end && follows(pad, next) && !isClauseWord(wordAt(pad, next)) && wordAt(pad, next) !== "asap") next += 1;
  if (next === at + 1) {
    ask(pad, "value-unreadable", placeOf(pad, at, next), `${key} and what is wanted`);
    return next;
  }
  wish(pad, key, typed(pad, at + 1, next), at + 1, next);
  return next;
}
