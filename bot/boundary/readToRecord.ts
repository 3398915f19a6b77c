import type { Amount } from "../../core/buildSheet/buildRequest.ts";
import { lean, type Notepad, wish, wordAt } from "./notepad.ts";
import { skipAll } from "./skipAll.ts";

const same: Amount = { kind: "same" };

/** `to spec`, `back to his spec`: as on record; a bend brings loft and lie back to it, a build is like the gamer. */
export function readToRecord(pad: Notepad, at: number): number {
  const start = wordAt(pad, at) === "back" ? at + 1 : at;
  const named = wordAt(pad, start) === "to" ? skipAll(pad, start + 1, ["his", "her", "the", "live"]) : start;
  if (named === start || !/^(specs?|record)$/.test(wordAt(pad, named))) return at;
  const next = named + 1;
  lean(pad, at, next);
  if (pad.kind === "bend") {
    wish(pad, "squaredLoftDeg", same, at, next);
    wish(pad, "seatedLieDeg", same, at, next);
  } else if (pad.kind === null || pad.kind === "build") pad.like ??= { from: "gamer" };
  return next;
}
