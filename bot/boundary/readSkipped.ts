import { orderKinds } from "../../core/kinds.ts";
import { lean, type Notepad, wordAt } from "./notepad.ts";
import { numberAt } from "./numberAt.ts";
import { own } from "./own.ts";
import { isFiller } from "./vocabulary.ts";

const bagWords = new Set(["bag", "set", "full", "whole", "clubs", "all"]);
/** `swap out toll's driver`, `turn it back to standard`, `regrip all tolls irons`. */
const beside: Readonly<Record<string, readonly string[]>> = { out: ["swap"], back: ["turn", "bend"], all: orderKinds };

/** `not 45 1/4`, `was d2`, `instead of 9`: the old value, skipped. */
export function readNegation(pad: Notepad, at: number): number {
  const word = wordAt(pad, at);
  const led = word === "not" || word === "was" || word === "instead" || word === "rather";
  const old = wordAt(pad, at + 1) === "of" || wordAt(pad, at + 1) === "than" ? at + 2 : at + 1;
  if (!led || pad.words[old] === undefined) return at;
  const hit = numberAt(pad.words, old);
  if (hit !== null) return hit.next;
  const swing = /^[a-g]$/.test(wordAt(pad, old)) && /^\d/.test(wordAt(pad, old + 1));
  return swing ? old + 2 : old + 1;
}

export function readFiller(pad: Notepad, at: number): number {
  if (pad.kind === "check" && bagWords.has(wordAt(pad, at))) return at + 1;
  if (pad.kind !== null && own(beside, wordAt(pad, at))?.includes(pad.kind) === true) return at + 1;
  return isFiller(wordAt(pad, at)) ? at + 1 : at;
}

/** `same` with nothing of its own leans on the club named after `like`. */
export function readSameAlone(pad: Notepad, at: number): number {
  if (wordAt(pad, at) !== "same" || pad.like === null) return at;
  lean(pad, at, at + 1);
  return at + 1;
}
