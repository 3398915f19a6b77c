import type { AmountQuantity } from "./amountAt.ts";
import { type Notepad, wordAt } from "./notepad.ts";
import { quantityOfWord } from "./vocabulary.ts";

const between = new Set(["is", "to", "at", "of", "as", "around", "about", "exactly", "now", "be", "make", "it", "a"]);

const twoWords: Readonly<Record<string, string>> = { swing: "weight", total: "weight", tip: "trim" };

/** The quantity named at a word and where its value starts: `swing`, `swing weight`, `head weight`. */
export function namedQuantity(pad: Notepad, at: number): { readonly quantity: AmountQuantity; readonly next: number } | null {
  const word = wordAt(pad, at);
  if ((word === "head" || word === "hd") && wordAt(pad, at + 1) === "weight") return { quantity: "headMassG", next: at + 2 };
  const quantity = quantityOfWord(word);
  if (quantity === null || quantity === "stampedLoftDeg") return null;
  return { quantity, next: twoWords[word] === wordAt(pad, at + 1) && word !== "" && Object.hasOwn(twoWords, word) ? at + 2 : at + 1 };
}

export function valueStart(pad: Notepad, at: number, name: string): number {
  let start = at;
  while (start < at + 2 && pad.words[start] !== undefined && (between.has(wordAt(pad, start)) || wordAt(pad, start) === name)) start += 1;
  return start;
}
