import type { FinishedClub } from "../../../core/bag/finishedClub.ts";
import type { RankedTwin } from "../../../core/bag/rankTwins.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { ClubName, Instant } from "../../../core/kinds.ts";
import type { MatchFacts } from "../../operations/matchFacts.ts";

export type RankedFinished = RankedTwin<FinishedClub>;

/** Who reads, and when. */
export interface MatchReader {
  readonly unit: "in" | "mm";
  readonly now: Instant;
}

/** One place in the bag with what is finished for it, the nearest first. */
export interface MatchedClub {
  readonly club: ClubName;
  readonly gamer: SpecClub;
  readonly finished: readonly RankedFinished[];
  /** What the list for play says of each head model; null where it does not matter. */
  readonly listed: MatchFacts["listed"];
}

/** What the list for play says of a head: words, or nothing where no list matters. */
export function listWords(listed: MatchFacts["listed"], model: string | null): string | null {
  if (listed === null) return null;
  const said = model === null ? null : (listed.get(model) ?? null);
  return said === null ? "list for play: unknown" : said ? "on the list for play" : "not on the list for play: testing only";
}
