import { ask, type Notepad, placeOf, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { skipAll } from "./skipAll.ts";
import { takeBy } from "./takeBy.ts";

const FURTHEST_BEFORE_TEE_MIN = 600;

/** `tee`, `tee time`, `tee -20`, `tee-20`, `20 min before tee`. */
export function readTee(pad: Notepad, at: number, start: number): number {
  const joined = /^tee(?:time)?-(\d{1,4})$/.exec(wordAt(pad, start));
  if (joined !== null) return takeTee(pad, at, start, -Number(joined[1]), start + 1);
  const before = numberAt(pad.words, start);
  if (before !== null) {
    const unitEnd = /^(m|min|mins|minutes)$/.test(wordAt(pad, before.next)) ? before.next + 1 : before.next;
    const tee = wordAt(pad, unitEnd) === "before" || wordAt(pad, unitEnd) === "b4" ? skipAll(pad, unitEnd + 1, ["his", "her", "the"]) : 0;
    return tee > 0 && /^tee$/.test(wordAt(pad, tee)) ? takeTee(pad, at, start, -Math.abs(before.value), teeEnd(pad, tee)) : at;
  }
  if (wordAt(pad, start) !== "tee" && wordAt(pad, start) !== "teetime") return at;
  const named = teeEnd(pad, start);
  const isMinus = wordAt(pad, named) === "minus" || wordAt(pad, named) === "less";
  const offset = numberAt(pad.words, isMinus ? named + 1 : named);
  if (offset === null || (!offset.signed && !isMinus)) return takeTee(pad, at, start, 0, named);
  const next = /^(m|min|mins|minutes)$/.test(wordAt(pad, offset.next)) ? offset.next + 1 : offset.next;
  return takeTee(pad, at, start, isMinus ? -Math.abs(offset.value) : offset.value, next);
}

const teeEnd = (pad: Notepad, tee: number): number => (wordAt(pad, tee + 1) === "time" ? tee + 2 : tee + 1);

function takeTee(pad: Notepad, at: number, start: number, offsetMin: number, next: number): number {
  if (offsetMin > 0 || offsetMin < -FURTHEST_BEFORE_TEE_MIN)
    ask(pad, "no-such-time", placeOf(pad, at, next), `tee -${FURTHEST_BEFORE_TEE_MIN} to tee`);
  else takeBy(pad, { kind: "tee", offsetMin }, start, next);
  return next;
}
