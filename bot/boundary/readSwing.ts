import type { Notepad } from "./notepad.ts";
import { swingWeightAt } from "./swingWeightAt.ts";
import { take } from "./takeAmount.ts";

/** `d3`, `D 3.5`. */
export function readSwing(pad: Notepad, at: number): number {
  const swing = swingWeightAt(pad.words, at, false);
  if (swing === null) return at;
  const amount = { kind: "exactly", value: swing.points } as const;
  return take(pad, "swingWeightPoints", at, { amount, perUnit: 1, numberFrom: at, numberEnd: swing.next, next: swing.next });
}
