import type { ClubName } from "../../core/kinds.ts";
import { clubAt } from "./clubAt.ts";
import { wordsOf } from "./wordsOf.ts";

/** One club by any name people write: `dr`, `3 wood`, `seven iron`, `sand wedge`; null when it is none or several. */
export function readClubName(text: string): ClubName | null {
  const { words } = wordsOf(text.slice(0, 40));
  const hit = clubAt(words, 0);
  if (hit?.kind !== "clubs" || hit.next !== words.length || hit.clubs.length !== 1) return null;
  return hit.clubs[0] ?? null;
}
