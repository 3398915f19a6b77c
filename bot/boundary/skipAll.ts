import { type Notepad, wordAt } from "./notepad.ts";

export const skipAll = (pad: Notepad, at: number, skipped: readonly string[]): number => {
  let next = at;
  while (next < at + 3 && skipped.includes(wordAt(pad, next))) next += 1;
  return next;
};
