import type { Instant } from "../../core/kinds.ts";
import { clockAt } from "./clockAt.ts";
import { wordsOf } from "./wordsOf.ts";

export type ReadClock =
  | { readonly kind: "at"; readonly at: Instant; readonly rest: string }
  | { readonly kind: "past" | "noSuchTime" }
  /** It begins with no time. */
  | { readonly kind: "none" };

const leads = new Set(["till", "til", "until", "at", "by", "from", "about", "around"]);

/** Reads a time at the start of a text, in the venue's zone: `till 14:00 short of a ferrule`, `2:30pm`, `at tue 7`. */
export function readClock(text: string, clock: { readonly now: Instant; readonly zone: string }): ReadClock {
  const { words } = wordsOf(text);
  let start = 0;
  while (leads.has(words[start]?.text ?? "")) start += 1;
  const hit = clockAt(words, start, { ...clock, bare: start > 0 });
  if (hit === null) return { kind: "none" };
  if (hit.kind !== "at") return { kind: hit.kind };
  const from = words[hit.next]?.from;
  return { kind: "at", at: hit.at, rest: from === undefined ? "" : text.slice(from).trim() };
}
