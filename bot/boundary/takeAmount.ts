import type { AmountQuantity } from "./amountAt.ts";
import { mend, type Notepad, type WrittenAmount, wishAmount } from "./notepad.ts";

export function noteComma(pad: Notepad, from: number, next: number): void {
  for (let at = from; at < next; at += 1) {
    const word = pad.words[at];
    if (word?.decimalComma === true) mend(pad, at, at + 1, word.text, "decimal-comma");
  }
}

export function take(pad: Notepad, quantity: AmountQuantity, from: number, written: WrittenAmount): number {
  noteComma(pad, from, written.next);
  wishAmount(pad, quantity, from, written);
  return written.next;
}
